import { must } from '../base/assert-never';
import type { ConnectorUse } from '../derive/harness';
import type { Equipment } from '../model/equipment';
import type { Mounting } from '../model/parts/mating-half';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Fix } from './finding';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { equipmentSource, fact, partFact, partNeed } from './shared/evidence';

export const panelMount: Rule<'connector'> = {
  meta: {
    id: 'panel-mount',
    revision: 1,
    severity: 'major',
    summary: 'Panel connectors sit in panels, board connectors on boards, and these carry no others.',
    why: 'A free housing has no flange to hold it in a cut-out and no tails to solder; a panel housing hangs in the air.',
    source: 'common practice: mounting is an attribute of its own, next to body form and contact kind',
    message: '{{connector}} is made for {{made}}, but {{placed}}',
    unknown: 'Whether {{connector}} can be mounted where it is cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const { connector, part, equipment } = use.resolved;
    if (!part) return;
    const carrier = equipment && equipment.kind !== 'device' ? equipment.kind : undefined;
    const mounting = part.mounting;
    const name = connector.designator;
    const common = {
      at: [connectorRef(use), ...(equipment ? [{ type: 'equipment' as const, id: equipment.id }] : [])],
      evidence: [
        ...partFact(part, 'mounting', mounting),
        ...(equipment ? fact('sits on', equipment.kind, equipmentSource(equipment)) : []),
      ],
    };
    if (mounting === undefined) {
      if (!carrier) return;
      return report.cannotVerify({
        ...common,
        data: { connector: name },
        needs: [partNeed(part, 'mounting', 'mounting')],
      });
    }
    if (mounting === 'free' && !carrier) return;
    // A device is bought complete: what its connectors sit in is its maker's concern.
    if (mounting === carrier || equipment?.kind === 'device') return report.pass();
    report.fail({
      ...common,
      data: { connector: name, made: MADE_FOR[mounting], placed: placedText(equipment) },
      // Without a carrier nothing is wrong in the metal yet; it only is not said where the connector goes.
      ...(equipment ? {} : { severity: 'minor' as const }),
      fix: fixOf(use, mounting),
    });
  },
  examples: () => ({
    good: [
      { name: 'a header on a board, free housings elsewhere', project: tiny() },
      { name: 'a panel housing in a panel', project: tiny((t) => onPanel(t, 'panel')) },
      {
        name: 'a panel housing that is part of a device',
        project: tiny((t) => {
          t.part('housing', 'H-PIN').mounting = 'panel';
          t.connector('X2').equipment = must(t.connector('X4').equipment, 'device');
        }),
      },
    ],
    bad: [
      { name: 'a free housing in a panel', project: tiny((t) => onPanel(t, 'free')), expect: ['X2'] },
      { name: 'a board part in a panel', project: tiny((t) => onPanel(t, 'board')), expect: ['X2'] },
      {
        name: 'a free housing on a board',
        project: tiny((t) => void (t.connector('X1').equipment = must(t.connector('X3').equipment, 'board'))),
        expect: ['X1'],
      },
      {
        name: 'a panel housing that belongs to no panel',
        project: tiny((t) => void (t.part('housing', 'H-PIN').mounting = 'panel')),
        expect: ['X2'],
      },
      {
        name: 'a header that belongs to no board',
        project: tiny((t) => void delete t.connector('X3').equipment),
        expect: ['X3'],
      },
    ],
    unknown: [
      {
        name: 'mounting not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').mounting),
        expect: ['X3'],
      },
      {
        name: 'mounting not stated, in a panel',
        project: tiny((t) => onPanel(t, undefined)),
        expect: ['X2'],
      },
    ],
  }),
};

const MADE_FOR: Readonly<Record<Mounting, string>> = {
  free: 'the free end of a harness',
  panel: 'a panel',
  board: 'a board',
};

const placedText = (equipment: Equipment | undefined): string =>
  equipment ? `sits on ${equipment.kind} ${equipment.designator}` : 'belongs to none';

/** Only a free housing is surely in the wrong place and not of the wrong kind. */
function fixOf(use: ConnectorUse, mounting: Mounting): Fix | undefined {
  const { connector, equipment } = use.resolved;
  if (mounting !== 'free' || !equipment) return undefined;
  return {
    label: `Take ${connector.designator} off ${equipment.designator}`,
    command: 'connector.edit',
    args: { ids: [connector.id], change: { equipment: null } },
  };
}

/** X2 in a panel, its housing of the given mounting. */
function onPanel(t: TinyDraft, mounting: Mounting | undefined): void {
  const id = t.newId();
  t.project.equipment.push({
    kind: 'panel', id, designator: 'A3', position: { x: 130, y: 0 }, widthMm: 5, heightMm: 80,
  }); // prettier-ignore
  t.connector('X2').equipment = id;
  if (mounting) t.part('housing', 'H-PIN').mounting = mounting;
  else delete t.part('housing', 'H-PIN').mounting;
}
