import { colourText } from '@latchwork/core/model/colour';
import { PART_KIND_NAMES, type Part } from '@latchwork/core/model/parts/part';
import { wireSizeText } from '@latchwork/core/model/wire-size';
import { Quantity } from '../../ui/quantity';
import { Alternates } from './alternates';
import { Section } from './section';

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm2$/, 'mm²'],
  [/Mm$/, 'mm'],
  [/Um$/, 'µm'],
  [/Mohm$/, 'mΩ'],
  [/OhmPerKm$/, 'Ω/km'],
  [/GPerM$/, 'g/m'],
  [/(?<=[a-z])N$/, 'N'],
  [/(?<=[a-z])A$/, 'A'],
  [/(?<=[a-z])V$/, 'V'],
  [/(?<=[a-z])C$/, '°C'],
  [/(?<=[a-z])G$/, 'g'],
  [/(?<=[a-z])S$/, 's'],
];

const HIDDEN = new Set([
  'id',
  'kind',
  'partNumber',
  'description',
  'maker',
  'catalogue',
  'offers',
  'compliance',
  'source',
  'origin',
]);

interface Fact {
  readonly label: string;
  readonly value: string;
  readonly unit: string | undefined;
}

/** What the record of a part says, field by field; what it does not say is not listed. */
export function factsOf(part: Part): readonly Fact[] {
  return Object.entries(part).flatMap(([key, raw]): Fact[] => {
    const value = HIDDEN.has(key) ? null : valueText(raw);
    if (value === null) return [];
    const unit = UNITS.find(([ending]) => ending.test(key));
    const bare = unit ? key.replace(unit[0], '') : key;
    const label = bare
      .replace(/([A-Z])/g, (c) => ` ${c.toLowerCase()}`)
      .replace(/^./, (c) => c.toUpperCase());
    return [{ label, value, unit: unit?.[1] }];
  });
}

function valueText(raw: unknown): string | null {
  if (typeof raw === 'string') return raw.replaceAll(/(?<=[a-z])-(?=[a-z])/g, ' ');
  if (typeof raw === 'number') return String(raw);
  if (typeof raw === 'boolean') return raw ? 'yes' : 'no';
  if (Array.isArray(raw)) {
    const texts = raw.map(valueText);
    if (texts.length === 0) return 'none';
    return texts.every((t) => t !== null) ? texts.join(', ') : null;
  }
  if (typeof raw !== 'object' || raw === null) return null;
  if ('system' in raw) return wireSizeText(raw as Parameters<typeof wireSizeText>[0]);
  if ('base' in raw) return colourText(raw as Parameters<typeof colourText>[0]);
  if ('strands' in raw && 'strandDiameterMm' in raw)
    return `${String(raw.strands)} × ${String(raw.strandDiameterMm)} mm`;
  return null;
}

/** The record of a part as a section of a card, and what stands in for it. */
export function PartFacts({ part }: { part: Part }) {
  return (
    <>
      {part.alternates?.length ? (
        <Section title="Alternates">
          <Alternates part={part} />
        </Section>
      ) : null}
      <Facts part={part} />
    </>
  );
}

function Facts({ part }: { part: Part }) {
  return (
    <Section title="Part record" open={false}>
      <dl className="facts">
        <div>
          <dt>Kind</dt>
          <dd>{PART_KIND_NAMES[part.kind]}</dd>
        </div>
        <div>
          <dt>Maker</dt>
          <dd>{part.maker}</dd>
        </div>
        {factsOf(part).map((f, i) => (
          <div key={`${f.label} ${i}`}>
            <dt>{f.label}</dt>
            <dd>
              <Quantity value={f.value} unit={f.unit} />
            </dd>
          </div>
        ))}
        <div>
          <dt>Record from</dt>
          <dd>
            {part.catalogue ? `${part.catalogue.name}, revision ${part.catalogue.revision}` : 'this project'}
          </dd>
        </div>
      </dl>
    </Section>
  );
}
