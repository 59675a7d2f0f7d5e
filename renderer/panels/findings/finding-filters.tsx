import { compareNatural } from '@latchwork/core/base/stable-order';
import { STANDINGS } from '@latchwork/core/decisions/standing';
import { SEVERITIES } from '@latchwork/core/rules/finding';
import { useApp } from '../../app/store';
import { connectorsOf, type FindingFilter, wiresOf } from './finding-filter';

type Option = readonly [value: string, text: string];
const same = (values: Iterable<string>): readonly Option[] =>
  [...new Set(values)].sort(compareNatural).map((v) => [v, v]);

/** The choices by which the list is cut down. Objects and rules are offered where they have a finding. */
export function FindingFilters({
  filter,
  change,
}: {
  filter: FindingFilter;
  change: (filter: FindingFilter) => void;
}) {
  const project = useApp((s) => s.check.harness.project);
  const findings = useApp((s) => s.check.findings);
  const select = (name: keyof FindingFilter, label: string, all: string, options: readonly Option[]) => (
    <select
      className="input"
      aria-label={label}
      value={filter[name]}
      onChange={(e) => change({ ...filter, [name]: e.target.value })}
    >
      <option value="">{all}</option>
      {options.map(([value, text]) => (
        <option key={value} value={value}>
          {text}
        </option>
      ))}
    </select>
  );
  return (
    <div className="findings-filters">
      <input
        className="input"
        type="search"
        placeholder="Object, words or rule"
        aria-label="Search findings"
        value={filter.text}
        onChange={(e) => change({ ...filter, text: e.target.value })}
      />
      <div className="findings-choices">
        {select(
          'severity',
          'Severity',
          'All severities',
          SEVERITIES.map((s) => [s, s]),
        )}
        {select('result', 'Result', 'All results', [
          ['fail', 'fails'],
          ['cannot-verify', 'cannot verify'],
          ['open', 'open points'],
        ])}
        {select(
          'standing',
          'Standing',
          'All standings',
          STANDINGS.map((s) => [s, s]),
        )}
        {select('rule', 'Rule', 'All rules', same(findings.map((f) => f.rule)))}
        {select(
          'connector',
          'Connector',
          'All connectors',
          same(findings.flatMap((f) => connectorsOf(project, f))),
        )}
        {select('wire', 'Wire', 'All wires', same(findings.flatMap((f) => wiresOf(project, f))))}
      </div>
    </div>
  );
}
