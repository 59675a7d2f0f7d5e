import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Station } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';

/** A place on a run: the segment, and how far along it. */
export function StationFields({
  label,
  name,
  station,
  commit,
}: {
  label?: string;
  name: string;
  station: Station;
  commit: (station: Station) => string | null;
}) {
  const project = useApp((s) => s.history.project);
  const choices = [...project.segments]
    .sort((a, b) => compareNatural(a.designator, b.designator))
    .map((s) => ({ value: s.id, text: s.designator }));
  const start = project.segments.find((s) => s.id === station.segment)?.from;
  const from = project.nodes.find((n) => n.id === start)?.designator;
  return (
    <>
      <ChoiceField
        label={label ? `${label} segment` : 'On segment'}
        name={`${name}.segment`}
        mono
        value={station.segment}
        choices={choices}
        choose={(segment) => void commit({ ...station, segment })}
      />
      <LengthField
        label="at"
        name={`${name}.atMm`}
        valueMm={station.atMm}
        allow="not-negative"
        hint={from ? `from ${from}` : 'from the first node of the segment'}
        commit={(atMm) => (atMm === null ? 'A station needs a place.' : commit({ ...station, atMm }))}
      />
    </>
  );
}
