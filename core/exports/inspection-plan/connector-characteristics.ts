import type { ConnectorUse, Harness } from '../../derive/harness';
import { connectorRef } from '../../rules/refs';
import { shopConnectors } from '../pinouts/pinout-connectors';
import { fittedParts } from '../pinouts/pinout-rows';
import type { Characteristic } from './characteristic';

const RECORD = 'record sheets, first article';

/** The right body, the right wire in each cavity, contacts seated, locks closed, plugs in. */
export const connectorCharacteristics = (harness: Harness): Characteristic[] =>
  shopConnectors(harness).flatMap((use) => ofConnector(harness, use));

function ofConnector(harness: Harness, use: ConnectorUse): Characteristic[] {
  const { connector, part, accessories } = use.resolved;
  const common = { at: connector.designator, record: RECORD, objects: [connectorRef(use)] };
  const wired = use.cavities.filter((c) => c.ends.length > 0);
  const undeclared = use.cavities.filter((c) => c.state === 'undeclared').map((c) => c.cavity);
  const plugs = use.cavities.filter((c) => c.state === 'plugged' || c.state === 'spare-contact');
  const locks = accessories.filter((a) => a.part?.kind === 'secondary-lock');
  const sealed = part?.kind === 'housing' && part.sealed === true;
  return [
    {
      ...common,
      what: 'connector',
      requirement: `${part?.partNumber ?? 'part not known'}, keying ${part?.keying ?? 'not stated'}${listed(fittedParts(harness, use))}`,
      class: 'major',
      method: 'by eye against the pinout',
      perHarness: 1,
      sampling: 'every',
      source: 'pinouts',
      missing: [...(part ? [] : ['part of the connector']), ...(part?.keying ? [] : ['keying'])],
    },
    ...(wired.length > 0
      ? [
          {
            ...common,
            what: 'wire and colour in each cavity',
            requirement: `${wired.length} cavities as in the pinout: an electrical test does not see size or colour`,
            class: 'major' as const,
            method: 'by eye against the pinout',
            perHarness: wired.length,
            sampling: 'plan' as const,
            source: 'pinouts',
            missing: undeclared.length > 0 ? [`state of cavities ${undeclared.join(', ')}`] : [],
          },
          {
            ...common,
            what: 'contacts seated',
            requirement: 'each holds against one push or pull; see the build sequence for the force',
            class: 'critical' as const,
            method: 'push or pull once for each insertion',
            perHarness: wired.length,
            sampling: 'every' as const,
            source: 'NASA-STD-8739.4, 13.8',
            missing: [],
          },
        ]
      : []),
    ...locks.map((l): Characteristic => ({
      ...common,
      what: 'secondary lock closed',
      requirement: l.part?.partNumber ?? 'lock',
      class: 'critical',
      method: 'by eye, or presence switch of the test adapter',
      perHarness: l.quantity,
      sampling: 'every',
      source: 'record of the connector; common practice',
      missing: [],
    })),
    ...(plugs.length > 0
      ? [
          {
            ...common,
            what: 'cavities without a wire',
            requirement: `${plugs.map((c) => `${c.cavity}: ${c.state === 'plugged' ? (c.plug?.partNumber ?? 'plug') : (c.spare?.partNumber ?? 'spare contact')}`).join(', ')}`,
            class: 'major' as const,
            method: 'by eye',
            perHarness: plugs.length,
            sampling: 'every' as const,
            source: 'pinouts',
            missing: plugs.some((c) => !c.plug && !c.spare) ? ['part in a cavity without a wire'] : [],
          },
        ]
      : []),
    ...(sealed
      ? [
          {
            ...common,
            what: 'wire seals',
            requirement: 'each lies in its cavity all around, not cut, not rolled',
            class: 'major' as const,
            method: 'by eye',
            perHarness: Math.max(1, wired.length),
            sampling: 'every' as const,
            source: 'common practice',
            missing: wired.some((c) => c.ends.some((e) => !e.end.seal)) ? ['wire seal of a cavity'] : [],
          },
        ]
      : []),
  ];
}

const listed = (parts: readonly string[]): string => (parts.length > 0 ? `, with ${parts.join(', ')}` : '');
