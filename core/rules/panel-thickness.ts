import { band, bandText } from '../derive/fit-band';
import type { Panel } from '../model/equipment';
import { roundTo } from '../model/length-text';
import type { MatingHalf } from '../model/parts/part';
import type { PanelFit } from '../model/parts/mating-half';
import type { Project } from '../model/project';
import { tiny } from '../model/tiny';
import type { Need } from './finding';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { equipmentNeed, equipmentSource, fact, partFact, partNeed } from './shared/evidence';

/** Speaks of connectors in panels. Coatings count, so a blank is not taken for none: 0 has to be typed. */
export const panelThickness: Rule<'connector'> = {
  meta: {
    id: 'panel-thickness',
    revision: 1,
    severity: 'major',
    summary: 'The panel with its coatings is within the thickness that the connector latches on.',
    why: 'On too thick a panel, often thick only after painting, the latch does not snap; on too thin a one it rattles out.',
    source: 'common practice: metal and coatings are added before they are compared with the latch range',
    message: '{{panel}} is {{thickness}} thick with coatings, {{connector}} takes {{range}}',
    unknown: 'Whether {{connector}} latches in {{panel}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { connector, part, equipment: panel } = resolved;
    if (!part || panel?.kind !== 'panel' || part.mounting === 'free' || part.mounting === 'board') return;
    const { thicknessMm, coatingsMm } = panel;
    const { thicknessMinMm: min, thicknessMaxMm: max } = part.panel ?? {};
    const whole =
      thicknessMm === undefined || coatingsMm === undefined
        ? undefined
        : roundTo(thicknessMm + coatingsMm, 6);
    const common = {
      at: [connectorRef(resolved), { type: 'equipment' as const, id: panel.id }],
      evidence: [
        ...fact('panel thickness', thicknessMm, equipmentSource(panel), 'mm'),
        ...fact('coatings, both faces', coatingsMm, equipmentSource(panel), 'mm'),
        ...fact('panel with coatings', whole, 'thickness + coatings', 'mm'),
        ...partFact(part, 'thinnest panel', min, 'mm'),
        ...partFact(part, 'thickest panel', max, 'mm'),
      ],
    };
    const names = { connector: connector.designator, panel: panel.designator };
    // Coatings only add: metal that is too thick alone decides without them.
    const answer = band(whole, whole ?? thicknessMm, min, max);
    if (answer === 'inside') return report.pass();
    if (answer === 'open')
      return report.cannotVerify({ ...common, data: names, needs: needsOf(part, panel, min, max) });
    const thickness = whole === undefined ? `${thicknessMm} mm or more` : `${whole} mm`;
    report.fail({ ...common, data: { ...names, thickness, range: bandText(min, max, 'mm') } });
  },
  examples: () => ({
    good: [
      {
        name: '1.5 mm and 0.1 mm of paint in 1.0 to 1.6 mm',
        project: panelOf({ thicknessMm: 1.5, coatingsMm: 0.1 }),
      },
      { name: 'as thin as it may be', project: panelOf({ thicknessMm: 1, coatingsMm: 0 }) },
      { name: 'no panel', project: tiny() },
    ],
    bad: [
      {
        name: 'too thick only with its paint',
        project: panelOf({ thicknessMm: 1.6, coatingsMm: 0.1 }),
        expect: ['X2'],
      },
      { name: 'too thin', project: panelOf({ thicknessMm: 0.8, coatingsMm: 0.1 }), expect: ['X2'] },
      { name: 'too thick whatever the coatings are', project: panelOf({ thicknessMm: 2 }), expect: ['X2'] },
    ],
    unknown: [
      { name: 'coatings not stated', project: panelOf({ thicknessMm: 1.5 }), expect: ['X2'] },
      { name: 'thickness not stated', project: panelOf({ coatingsMm: 0.1 }), expect: ['X2'] },
      {
        name: 'range of the latch not stated',
        project: panelOf({ thicknessMm: 1.5, coatingsMm: 0 }, { thicknessMinMm: 1 }),
        expect: ['X2'],
      },
      {
        name: 'nothing of the panel stated by the part',
        project: panelOf({ thicknessMm: 1.5, coatingsMm: 0 }, null),
        expect: ['X2'],
      },
    ],
  }),
};

function needsOf(part: MatingHalf, panel: Panel, min: number | undefined, max: number | undefined): Need[] {
  return [
    ...(panel.thicknessMm === undefined ? [equipmentNeed(panel, 'thicknessMm', 'thickness')] : []),
    ...(panel.coatingsMm === undefined ? [equipmentNeed(panel, 'coatingsMm', 'coatings')] : []),
    ...(min === undefined ? [partNeed(part, 'panel.thicknessMinMm', 'thinnest panel')] : []),
    ...(max === undefined ? [partNeed(part, 'panel.thicknessMaxMm', 'thickest panel')] : []),
  ];
}

/** X2 in a panel; null for a part that states nothing about panels. */
function panelOf(
  given: Pick<Panel, 'thicknessMm' | 'coatingsMm'>,
  fit: PanelFit | null = { thicknessMinMm: 1, thicknessMaxMm: 1.6 },
): Project {
  return tiny((t) => {
    const id = t.newId();
    t.project.equipment.push({
      kind: 'panel', id, designator: 'A3', position: { x: 130, y: 0 }, widthMm: 5, heightMm: 80, ...given,
    }); // prettier-ignore
    t.connector('X2').equipment = id;
    t.part('housing', 'H-PIN').mounting = 'panel';
    if (fit) t.part('housing', 'H-PIN').panel = fit;
  });
}
