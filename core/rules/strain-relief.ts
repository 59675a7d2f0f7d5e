import { bundleMembers, bundleOf } from '../derive/bundle';
import { band, bandText } from '../derive/fit-band';
import type { ConnectorUse, ResolvedWire } from '../derive/harness';
import { tiny } from '../model/tiny';
import { connectorRef, partRef, wireRef } from './refs';
import type { Rule } from './rule';
import { shownMm } from './shared/bundle-words';
import { fact, partFact, partNeed } from './shared/evidence';
import { addStrainRelief } from './shared/example-fixing';

/** Speaks of strain reliefs that are fitted to a connector, held against the wires that end in it. */
export const strainRelief: Rule<'connector'> = {
  meta: {
    id: 'strain-relief',
    revision: 1,
    severity: 'major',
    summary: 'A strain relief grips the wires of its connector.',
    why: 'Where it does not close around the wires every pull goes to the crimps; where it is too narrow it cuts into insulation or stays open.',
    source:
      'FAA AC 43.13-1B, 11-235e, f (support of wires at connectors); common practice: packing of unequal circles, loosened as laid by hand',
    message:
      'The wires of {{connector}} are {{measured}} mm thick, the strain relief {{part}} takes {{limit}}',
    unknown:
      'Whether the strain relief {{part}} grips the wires of {{connector}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const wires = wiresOf(use);
    if (wires.length === 0) return;
    for (const { part } of use.resolved.accessories) {
      if (part?.kind !== 'strain-relief') continue;
      const members = bundleMembers(wires);
      const laidMm = bundleOf({ diametersMm: members.map((m) => m.diameterMm) })?.laidMm;
      const names = { connector: use.resolved.connector.designator, part: part.partNumber };
      const at = [connectorRef(use), partRef(part)];
      const evidence = [
        ...fact(
          `bundle of ${members.length} at ${names.connector}`,
          laidMm === undefined ? undefined : shownMm(laidMm),
          'packed circles of the wires, as laid by hand',
          'mm',
        ),
        ...partFact(part, 'thinnest bundle', part.bundleMinMm, 'mm'),
        ...partFact(part, 'thickest bundle', part.bundleMaxMm, 'mm'),
      ];
      const answer = band(laidMm, laidMm, part.bundleMinMm ?? 0, part.bundleMaxMm);
      if (answer === 'inside') report.pass();
      else if (answer === 'outside')
        report.fail({
          at,
          data: {
            ...names,
            measured: shownMm(laidMm ?? 0),
            limit: bandText(part.bundleMinMm, part.bundleMaxMm, 'mm'),
          },
          evidence,
        });
      else {
        const needs = [
          ...members.flatMap((m) => m.without.map((p) => partNeed(p, 'odMm', 'outside diameter'))),
          ...members
            .filter((m) => m.diameterMm === undefined && m.without.length === 0)
            .flatMap((m) => m.wires)
            .map((w) => ({ what: `record of ${w.wire.designator}`, at: wireRef(w), field: 'part' })),
          ...(part.bundleMaxMm === undefined ? [partNeed(part, 'bundleMaxMm', 'thickest bundle')] : []),
        ];
        report.cannotVerify({ at, data: names, needs, evidence });
      }
    }
  },
  examples: () => ({
    good: [
      { name: 'no strain relief', project: tiny() },
      {
        name: 'two wires of 1.2 mm, side by side 2.4 mm, in one for 2 to 5 mm',
        project: tiny((t) => addStrainRelief(t, { bundleMinMm: 2, bundleMaxMm: 5 })),
      },
    ],
    bad: [
      {
        name: 'too wide to grip',
        project: tiny((t) => addStrainRelief(t, { bundleMinMm: 4, bundleMaxMm: 8 })),
        expect: ['X1'],
      },
      {
        name: 'too narrow to close',
        project: tiny((t) => addStrainRelief(t, { bundleMaxMm: 2 })),
        expect: ['X1'],
      },
    ],
    unknown: [
      {
        name: 'its record does not say what it takes',
        project: tiny((t) => addStrainRelief(t, {})),
        expect: ['X1'],
      },
      {
        name: 'a wire without its diameter',
        project: tiny((t) => {
          delete t.part('wire', 'WIRE-22').odMm;
          addStrainRelief(t, { bundleMinMm: 2, bundleMaxMm: 5 });
        }),
        expect: ['X1'],
      },
    ],
  }),
};

/** Wires that end in the connector, each once. */
const wiresOf = (use: ConnectorUse): readonly ResolvedWire[] => [
  ...new Set(use.cavities.flatMap((c) => c.ends.map((e) => e.wire))),
];
