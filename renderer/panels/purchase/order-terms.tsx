import { PART_KIND_NAMES, type PartKind } from '@latchwork/core/model/parts/part';
import { PURCHASING_DEFAULTS, scrapOf } from '@latchwork/core/model/purchasing';
import type { Project } from '@latchwork/core/model/project';
import { roundTo } from '@latchwork/core/model/length-text';
import type { PurchaseOrder } from '@latchwork/core/exports/purchase/purchase-order';
import type { CallArgs } from './purchasing-change';
import { NumberField } from '../../ui/number-field';
import { TextField } from '../../ui/text-field';
import { attempt } from '../inspector/fields';
import { AskSuppliers } from './ask-suppliers';
import { Section } from '../inspector/section';

const edit = (change: CallArgs): string | null =>
  attempt({ id: 'project.edit-purchasing', args: { change } });

/** What orders of this project go by: volumes, currency, set-up, samples, scrap. Nothing entered: common practice. */
export function OrderTerms({ project, order }: { project: Project; order: PurchaseOrder }) {
  const p = project.purchasing ?? {};
  const kinds = [...new Set(order.lines.map((l) => l.line.kind))];
  return (
    <div className="panel-scroll">
      <div className="panel-head">
        <h2>Terms of the order</h2>
      </div>
      <p className="line-form second">
        Choose a line to see how its quantity came about and to edit its offers.
      </p>
      <Section title="Order">
        <TextField
          label="Volumes"
          mono
          value={project.buildQuantities.join(', ')}
          hint="Builds of the project, compared side by side."
          commit={setVolumes}
        />
        <TextField
          label="Currency"
          mono
          value={p.currency ?? ''}
          placeholder="any"
          hint="Offers in it are taken first. Nothing is converted."
          commit={(text) => edit({ currency: text === '' ? null : text.trim().toUpperCase() })}
        />
      </Section>
      <Section title="Request for quotation">
        <AskSuppliers order={order} />
      </Section>
      <Section title="Set-up and samples">
        <NumberField
          label="Set-up pieces"
          unit="pcs"
          whole
          value={p.setUpPieces}
          placeholder={String(PURCHASING_DEFAULTS.setUpPieces)}
          hint={`For each contact and wire that are crimped together. ${said(p.setUpPieces)}`}
          commit={(setUpPieces) => edit({ setUpPieces })}
        />
        <NumberField
          label="Samples"
          unit="pcs"
          whole
          value={p.samplesPerCrimp}
          placeholder={String(PURCHASING_DEFAULTS.samplesPerCrimp)}
          hint={`Pulled apart or cut through, for each contact and wire. ${said(p.samplesPerCrimp)}`}
          commit={(samplesPerCrimp) => edit({ samplesPerCrimp })}
        />
        <NumberField
          label="Run waste"
          unit="mm"
          value={p.runWasteMm}
          placeholder={String(PURCHASING_DEFAULTS.runWasteMm)}
          hint={`Lost at the beginning of a run, for each part and colour. ${said(p.runWasteMm)}`}
          commit={(runWasteMm) => edit({ runWasteMm })}
        />
        <NumberField
          label="On one setting"
          unit="harnesses"
          whole
          positive
          value={p.harnessesPerSetUp}
          placeholder="the whole order"
          hint="A large order is made in several goes, each with its set-up and samples."
          commit={(harnessesPerSetUp) => edit({ harnessesPerSetUp })}
        />
      </Section>
      <Section title="Scrap">
        {kinds.map((kind) => (
          <ScrapField key={kind} project={project} kind={kind} />
        ))}
        <p className="second">What is not entered goes by {PURCHASING_DEFAULTS.source}.</p>
      </Section>
    </div>
  );
}

function ScrapField({ project, kind }: { project: Project; kind: PartKind }) {
  const entered = project.purchasing?.scrap?.[kind];
  return (
    <NumberField
      label={PART_KIND_NAMES[kind]}
      unit="%"
      value={entered === undefined ? undefined : roundTo(entered * 100, 4)}
      placeholder={String(roundTo(scrapOf(project, kind).value * 100, 4))}
      commit={(percent) => edit({ scrap: { [kind]: percent === null ? null : roundTo(percent / 100, 6) } })}
    />
  );
}

const said = (entered: number | undefined): string =>
  entered === undefined ? `Not entered: ${PURCHASING_DEFAULTS.source}.` : 'Entered for this project.';

function setVolumes(text: string): string | null {
  const volumes = text
    .split(/[,;\s]+/)
    .filter(Boolean)
    .map(Number);
  if (volumes.length === 0 || volumes.some((n) => !Number.isSafeInteger(n) || n <= 0))
    return 'Whole numbers of harnesses are needed here, such as "1, 10, 100".';
  const buildQuantities = [...new Set(volumes)].sort((a, b) => a - b);
  return attempt({ id: 'project.edit', args: { change: { buildQuantities } } });
}
