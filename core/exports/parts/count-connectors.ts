import type { CavityUse, ConnectorUse, Harness } from '../../derive/harness';
import { byId } from '../../base/by-id';
import { cavityName, cavityRef, connectorRef } from '../../rules/refs';
import type { PartLines, Supply } from './part-lines';

/** Housings, headers and what is fitted to them; contacts as objects, seals and plugs by cavity. */
export function countConnectors(harness: Harness, lines: PartLines): void {
  for (const use of harness.connectors) {
    const { connector, part, accessories } = use.resolved;
    const record = harness.parts.get(connector.part);
    const at = { designator: connector.designator, object: connectorRef(use) };
    const common = { colour: null, supply: connector.supply, unit: 'pcs' } as const;
    lines.add({ ...common, kind: record?.kind ?? 'housing', part: record }, { amount: 1, ...at });
    for (const a of accessories)
      if (a.part) lines.add({ ...common, kind: a.part.kind, part: a.part }, { amount: a.quantity, ...at });
    for (const cavity of use.cavities) {
      countContacts(harness, cavity, part?.kind !== 'header', connector.supply, lines);
      countSeals(harness, cavity, lines);
      countPlugs(use, cavity, lines);
    }
  }
}

/** Each contact object once, however many wires share its crimp. Only housings take contacts of their own. */
function countContacts(
  harness: Harness,
  cavity: CavityUse,
  takesContacts: boolean,
  connectorSupply: Supply,
  lines: PartLines,
): void {
  const at = { designator: cavityName(cavity), object: cavityRef(cavity) };
  const common = { kind: 'contact', colour: null, unit: 'pcs' } as const;
  const counted = new Set<string>();
  for (const { end } of cavity.ends) {
    if (end.contact) {
      if (counted.has(end.contact.id)) continue;
      counted.add(end.contact.id);
      const part = harness.parts.get(end.contact.part);
      lines.add({ ...common, part, supply: 'harness' }, { amount: 1, ...at });
    } else if (takesContacts)
      lines.add({ ...common, part: undefined, supply: 'harness' }, { amount: 1, ...at });
  }
  const entry = cavity.entry;
  if (entry?.contact && !counted.has(entry.contact)) {
    const contact = byId(harness.project.contacts).get(entry.contact);
    const part = contact && harness.parts.get(contact.part);
    lines.add({ ...common, part, supply: connectorSupply }, { amount: 1, ...at, remark: 'spare contact' });
  } else if (takesContacts && cavity.state === 'spare-contact' && !entry?.contact)
    lines.add(
      { ...common, part: undefined, supply: connectorSupply },
      { amount: 1, ...at, remark: 'spare contact' },
    );
}

function countSeals(harness: Harness, cavity: CavityUse, lines: PartLines): void {
  for (const { end } of cavity.ends) {
    if (end.end.at !== 'cavity' || !end.end.seal) continue;
    lines.add(
      {
        kind: 'wire-seal',
        part: harness.parts.get(end.end.seal),
        colour: null,
        supply: 'harness',
        unit: 'pcs',
      },
      { amount: 1, designator: cavityName(cavity), object: cavityRef(cavity) },
    );
  }
}

/** A plug is counted only where the cavity is plugged, or blocked by it: a wire that was put in later drives it out. */
function countPlugs(use: ConnectorUse, cavity: CavityUse, lines: PartLines): void {
  const isKey = cavity.state === 'blocked' && cavity.plug !== undefined;
  if (cavity.state !== 'plugged' && !isKey) return;
  lines.add(
    {
      kind: 'cavity-plug',
      part: cavity.plug,
      colour: null,
      supply: use.resolved.connector.supply,
      unit: 'pcs',
    },
    { amount: 1, designator: cavityName(cavity), object: cavityRef(cavity) },
  );
}
