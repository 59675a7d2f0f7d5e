import { tiny } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { fact } from './shared/evidence';

export const mateMissing: Rule<'connector'> = {
  meta: {
    id: 'mate-missing',
    revision: 1,
    severity: 'minor',
    summary: 'A connector of the harness in which wires end names its mate or is stated to stay unmated.',
    why:
      'Without its counterpart nothing can be said of interface, keying, numbers and finish, and the end is found to ' +
      'be the wrong one when the harness is fitted.',
    source: 'common practice: a pinout sheet names the mate of its connector',
    message: '{{connector}} holds {{wires}} wire ends and names no mate',
    unknown: 'Whether {{connector}} has a mate cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const { connector } = use.resolved;
    const wires = use.cavities.reduce((n, c) => n + c.ends.length, 0);
    if (connector.supply !== 'harness' || wires === 0) return;
    if (use.mates.length > 0 || connector.unmated === true) return report.pass();
    report.fail({
      open: true,
      at: [connectorRef(use)],
      data: { connector: connector.designator, wires },
      evidence: [
        ...fact('wire ends', wires, `project, ${connector.designator}`),
        ...fact('mates', 0, `project, ${connector.designator}`),
      ],
      fix: {
        label: `State that ${connector.designator} stays unmated`,
        command: 'connector.edit',
        args: { ids: [connector.id], change: { unmated: true } },
      },
    });
  },
  examples: () => ({
    good: [
      { name: 'both ends are mated', project: tiny() },
      {
        name: 'stated to stay unmated',
        project: tiny((t) => {
          t.project.mates = t.project.mates.filter((m) => m.a !== t.connector('X1').id);
          t.connector('X1').unmated = true;
        }),
      },
      {
        name: 'a connector without wires',
        project: tiny((t) => {
          t.project.wires = [];
          t.project.mates = [];
        }),
      },
    ],
    bad: [
      {
        name: 'no mate and nothing stated',
        project: tiny((t) => void (t.project.mates = [])),
        expect: ['X1', 'X2'],
      },
    ],
    unknown: [],
  }),
};
