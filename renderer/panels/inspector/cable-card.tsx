import { byId } from '@latchwork/core/base/by-id';
import { partOfKind } from '@latchwork/core/model/parts/part';
import type { Cable } from '@latchwork/core/model/wire';
import { useApp } from '../../app/store';
import { LabelsHere } from './labels-here';
import { PartFacts } from './part-facts';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

/** A placed cable: its cores, and the wires that they are drawn as. */
export function CableCard({ cable }: { cable: Cable }) {
  const project = useApp((s) => s.history.project);
  const part = byId(project.parts).get(cable.part);
  const cores = partOfKind(part, 'cable')?.cores ?? [];
  const wireOf = (core: string): string | undefined =>
    project.wires.find((w) => w.core?.cable === cable.id && w.core.name === core)?.id;
  return (
    <>
      <CardHead name={cable.designator} kind="cable" />
      <Section title="Cores">
        <table className="mini-table">
          <tbody>
            {cores.map((core) => {
              const wire = wireOf(core.name);
              return (
                <tr key={core.name}>
                  <td className="mono">{core.name}</td>
                  <td className="mono">{core.colour?.base}</td>
                  <td>
                    {wire ? (
                      <RefLink to={{ type: 'wire', id: wire }} />
                    ) : (
                      <span className="second">not connected</span>
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
        {cable.note ? <p>{cable.note}</p> : null}
      </Section>
      <LabelsHere id={cable.id} />
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
