import { tiny, type TinyDraft } from '../model/tiny';
import type { Rule } from './rule';
import { declaredAtPositions, declaredByWires } from './shared/declared-signals';

/**
 * Positions decide: two of them with different signals are joined in metal. The names of wires count only where no
 * position declares anything; a wire that is named otherwise than its positions is `net-ends`.
 */
export const netConflict: Rule<'net'> = {
  meta: {
    id: 'net-conflict',
    revision: 1,
    severity: 'critical',
    summary: 'Everything that is connected carries one signal.',
    why: 'Two signals on one net are a short circuit between two outputs, or a supply on an input: equipment is destroyed at the first switching on, or a wire burns.',
    source: 'common practice: pin functions on a net do not contradict each other',
    message: '{{places}} are connected but carry different signals',
    unknown: 'Which signals are connected cannot be verified; not stated: {{needs}}',
  },
  scope: 'net',
  check(net, report) {
    const atPositions = declaredAtPositions(net);
    const declared = atPositions.length > 0 ? atPositions : declaredByWires(net);
    if (declared.length === 1) report.pass();
    if (declared.length < 2) return;
    report.fail({
      at: declared.map((d) => d.ref),
      data: { places: declared.map((d) => `${d.name} (${d.signal.name})`).join(', ') },
      evidence: declared.map((d) => d.evidence),
    });
  },
  examples: () => ({
    good: [
      { name: 'one signal from board to device', project: tiny() },
      {
        name: 'positions agree, and a wire bears another name',
        project: tiny((t) => {
          t.wire('W1').signal = t.wire('W2').signal;
        }),
      },
    ],
    bad: [
      {
        name: 'two wires swapped at one end',
        project: tiny((t) => {
          const [w1, w2] = [t.wire('W1').ends[1], t.wire('W2').ends[1]];
          if (w1.at === 'cavity' && w2.at === 'cavity') [w1.cavity, w2.cavity] = [w2.cavity, w1.cavity];
        }),
        expect: ['X3:1', 'X3:2'],
      },
      {
        name: 'wires of two signals in one splice, no interface known',
        project: tiny((t) => {
          t.connector('X3').cavities = t.connector('X4').cavities = [{ cavity: '3', state: 'empty' }];
          for (const s of t.project.signals) delete s.source;
          spliceBoth(t);
        }),
        expect: ['W1'],
      },
    ],
    unknown: [],
  }),
};

function spliceBoth(t: TinyDraft): void {
  const splice = t.newId();
  t.project.splices.push({ id: splice, designator: 'XS1', position: { x: 60, y: 0 } });
  for (const w of ['W1', 'W2']) t.wire(w).ends[1] = { at: 'splice', splice };
}
