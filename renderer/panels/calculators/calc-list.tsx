import { Header, ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components';
import { calculatorsStore, useCalculators } from './calculators-store';
import { searchCalculations } from './search-calculations';

/** All calculations by subject, with a search over their words, inputs and sources. */
export function CalcList() {
  const search = useCalculators((s) => s.search);
  const chosen = useCalculators((s) => s.chosen);
  const groups = searchCalculations(search);
  return (
    <nav className="calc-list" aria-label="Calculations">
      <input
        className="input"
        type="search"
        aria-label="Search calculations"
        placeholder="Search: bend, 22 AWG, fuse …"
        value={search}
        autoFocus
        onChange={(e) => calculatorsStore.setState({ search: e.target.value })}
      />
      {groups.length === 0 ? <p className="second">No calculation has these words.</p> : null}
      <ListBox
        className="calc-list-box"
        aria-label="Calculations"
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={[chosen]}
        onSelectionChange={(keys) => {
          const [key] = keys;
          if (typeof key === 'string') calculatorsStore.setState({ chosen: key });
        }}
      >
        {groups.map((group) => (
          <ListBoxSection key={group.title} id={group.title} className="calc-group">
            <Header>{group.title}</Header>
            {group.entries.map((entry) => (
              <ListBoxItem key={entry.id} id={entry.id} className="calc-item" textValue={entry.title}>
                {entry.title}
              </ListBoxItem>
            ))}
          </ListBoxSection>
        ))}
      </ListBox>
    </nav>
  );
}
