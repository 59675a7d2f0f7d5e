import { useEffect, useRef } from 'react';
import { byId } from '@latchwork/core/base/by-id';
import type { ObjectRef } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { selectedRefs } from '../../app/selection';
import { keyOfRef, useApp } from '../../app/store';
import { PanelHead } from '../panel-head';
import { ProjectCard } from '../project/project-card';
import { CableCard } from './cable-card';
import { CavityCard } from './cavity-card';
import { ConnectorCard } from './connector-card';
import { CoveringCard } from './covering-card';
import { DimensionCard } from './dimension-card';
import { EquipmentCard } from './equipment-card';
import { FixingCard } from './fixing-card';
import { FuseCard } from './fuse-card';
import { GroupCard } from './group-card';
import './inspector.css';
import { LabelCard } from './label-card';
import { MateCard } from './mate-card';
import { NodeCard } from './node-card';
import { CardHead, CardKey } from './section';
import { SegmentCard } from './segment-card';
import { SeveralCard } from './several-card';
import { SpliceCard } from './splice-card';
import { TieCard } from './tie-card';
import { WireCard } from './wire-card';

/** All there is to say and change about what is selected; about the project while nothing is. */
export function Inspector() {
  const project = useApp((s) => s.history.project);
  const selection = useApp((s) => s.view.selection);
  const refs = selectedRefs(project, selection);
  const scroll = useFieldRequests();
  const only = refs.length === 1 ? refs[0] : undefined;
  return (
    <section className="column" aria-label="Inspector">
      <PanelHead id="inspector" title="Inspector" />
      <div ref={scroll} className="inspector-scroll" key={only ? keyOfRef(only) : String(refs.length)}>
        {refs.length === 0 ? <ProjectCard /> : only ? <CardOf of={only} /> : <SeveralCard refs={refs} />}
      </div>
    </section>
  );
}

function CardOf({ of: ref }: { of: ObjectRef }) {
  return (
    <CardKey value={keyOfRef(ref)}>
      <Card of={ref} />
    </CardKey>
  );
}

function Card({ of: ref }: { of: ObjectRef }) {
  const harness = useApp((s) => s.harness);
  const { project } = harness;
  switch (ref.type) {
    case 'connector': {
      const use = harness.connectorById.get(ref.id);
      return use ? <ConnectorCard use={use} /> : null;
    }
    case 'cavity': {
      const cavity = harness.connectorById.get(ref.id)?.cavities.find((c) => c.cavity === ref.cavity);
      return cavity ? <CavityCard cavity={cavity} /> : null;
    }
    case 'wire': {
      const wire = harness.wireById.get(ref.id);
      return wire ? <WireCard wire={wire} /> : null;
    }
    case 'mate': {
      const mate = harness.mates.find((m) => m.mate.id === ref.id);
      return mate ? <MateCard mate={mate} /> : null;
    }
    case 'equipment': {
      const equipment = byId(project.equipment).get(ref.id);
      return equipment ? <EquipmentCard equipment={equipment} /> : null;
    }
    case 'splice': {
      const splice = byId(project.splices).get(ref.id);
      return splice ? <SpliceCard splice={splice} /> : null;
    }
    case 'node': {
      const node = byId(project.nodes).get(ref.id);
      return node ? <NodeCard node={node} /> : null;
    }
    case 'segment': {
      const segment = byId(project.segments).get(ref.id);
      return segment ? <SegmentCard segment={segment} /> : null;
    }
    case 'covering': {
      const covering = byId(project.coverings).get(ref.id);
      return covering ? <CoveringCard covering={covering} /> : null;
    }
    case 'tie': {
      const tie = byId(project.ties).get(ref.id);
      return tie ? <TieCard tie={tie} /> : null;
    }
    case 'fixing': {
      const fixing = byId(project.fixings).get(ref.id);
      return fixing ? <FixingCard fixing={fixing} /> : null;
    }
    case 'label': {
      const label = byId(project.labels).get(ref.id);
      return label ? <LabelCard label={label} /> : null;
    }
    case 'dimension': {
      const dimension = byId(project.dimensions).get(ref.id);
      return dimension ? <DimensionCard dimension={dimension} /> : null;
    }
    case 'group': {
      const group = byId(project.groups).get(ref.id);
      return group ? <GroupCard group={group} /> : null;
    }
    case 'cable': {
      const cable = byId(project.cables).get(ref.id);
      return cable ? <CableCard cable={cable} /> : null;
    }
    case 'fuse': {
      const fuse = byId(project.fuses).get(ref.id);
      return fuse ? <FuseCard fuse={fuse} /> : null;
    }
    default:
      return <CardHead name={refText(project, ref)} kind={ref.type} />;
  }
}

/** Puts the focus into the field that a finding's "needs" names. */
function useFieldRequests() {
  const scroll = useRef<HTMLDivElement>(null);
  const request = useApp((s) => s.view.field);
  const done = useRef(0);
  useEffect(() => {
    if (!request || request.count === done.current) return;
    const name = CSS.escape(request.name);
    // Fields that each end of a wire has carry the number of the end.
    const field = scroll.current?.querySelector(`[data-field="${name}"], [data-field^="${name}-"]`);
    if (!field) return;
    done.current = request.count;
    field.closest('details')?.setAttribute('open', '');
    field.scrollIntoView({ block: 'center' });
    field.querySelector<HTMLElement>('input, select, textarea, button')?.focus();
  });
  return scroll;
}
