// Fences that need the whole graph. Each rule says why in its comment.
const allowedInCore = (layer, others) => ({
  name: `core-${layer}-layer`,
  comment: `core/${layer} stands on ${others.join(', ')} only; a lower layer never knows an upper one.`,
  severity: 'error',
  from: { path: `^core/${layer}/` },
  to: { path: '^core/', pathNot: `^core/(${[layer, ...others].join('|')})/` },
});

// Files of core/rules that are no rule.
const ruleMachinery = '^core/rules/(index|rule|finding|finding-text|refs|check-harness)[.]ts$';

module.exports = {
  forbidden: [
    {
      name: 'no-cycles',
      comment: 'Files that need each other are one file in disguise, and their start-up order is luck.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-rule-to-rule',
      comment:
        'A rule can be read, tested and deleted alone. Shared facts live in derive, calc or the machinery of rules.',
      severity: 'error',
      from: { path: '^core/rules/[^/]+[.]ts$', pathNot: ruleMachinery },
      to: { path: '^core/rules/[^/]+[.]ts$', pathNot: ruleMachinery },
    },
    {
      name: 'no-rule-from-machinery',
      comment: 'What all rules stand on knows none of them; only the list does.',
      severity: 'error',
      from: { path: ruleMachinery, pathNot: '^core/rules/(index|check-harness)[.]ts$' },
      to: { path: '^core/rules/[^/]+[.]ts$', pathNot: ruleMachinery },
    },
    {
      name: 'core-is-lowest',
      comment:
        'core is pure TypeScript: it runs in the window, in a worker, in the shells and in tests alike.',
      severity: 'error',
      from: { path: '^core/' },
      to: { path: '^(renderer|electron|tests)/' },
    },
    {
      name: 'core-packages',
      comment: 'core depends on zod and immer only, so that nothing in it can reach the machine.',
      severity: 'error',
      from: { path: '^core/' },
      to: {
        dependencyTypes: ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'core'],
        pathNot: 'node_modules/(zod|immer)/',
      },
    },
    allowedInCore('base', []),
    allowedInCore('model', ['base', 'catalogue']),
    allowedInCore('catalogue', ['base', 'model']),
    allowedInCore('derive', ['base', 'model', 'catalogue', 'calc']),
    allowedInCore('calc', ['base', 'model', 'catalogue', 'derive']),
    allowedInCore('rules', ['base', 'model', 'catalogue', 'derive', 'calc']),
    allowedInCore('commands', ['base', 'model', 'catalogue', 'derive', 'calc']),
    allowedInCore('decisions', ['base', 'model', 'catalogue', 'derive', 'calc', 'rules']),
    allowedInCore('exports', ['base', 'model', 'catalogue', 'derive', 'calc', 'rules', 'decisions']),
    allowedInCore('import', ['base', 'model', 'catalogue', 'derive', 'calc', 'commands']),
    allowedInCore('merge', ['base', 'model', 'catalogue', 'derive', 'calc', 'commands']),
    allowedInCore('tools', ['base', 'model', 'catalogue', 'derive', 'calc', 'commands']),
    allowedInCore('bridge', ['base', 'model', 'catalogue', 'exports']),
    {
      name: 'window-has-no-machine',
      comment: 'The window is sandboxed: it asks through core/bridge and holds tokens, never paths.',
      severity: 'error',
      from: { path: '^renderer/', pathNot: '^renderer/vite[.]config[.]ts$' },
      to: { path: '^electron/|node_modules/electron/|^node:|^tests/' },
    },
    {
      name: 'window-has-no-node',
      comment: 'A Node module in the window builds today and fails in the sandbox tomorrow.',
      severity: 'error',
      from: { path: '^renderer/', pathNot: '^renderer/vite[.]config[.]ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'shells-do-not-draw',
      comment: 'The shells serve the built window; they never import it.',
      severity: 'error',
      from: { path: '^electron/' },
      to: { path: '^renderer/|^tests/|node_modules/(react|react-dom|konva|react-konva|zustand)/' },
    },
    {
      name: 'services-know-no-shell',
      comment: 'The same services stand behind Electron, the browser host and the command line.',
      severity: 'error',
      from: { path: '^electron/services/' },
      to: { path: '^electron/(main|preload|host|cli|start)/|node_modules/electron/' },
    },
    {
      name: 'preload-is-tiny',
      comment: 'The preload sees both worlds, so it knows the channel names and nothing else.',
      severity: 'error',
      from: { path: '^electron/preload/' },
      to: { pathNot: '^core/bridge/channels[.]ts$|node_modules/electron/|^electron$' },
    },
    {
      name: 'no-orphans',
      comment: 'A file that nothing imports and that imports nothing is dead or misplaced.',
      severity: 'error',
      from: { orphan: true, pathNot: '[.]d[.]ts$|[.]config[.](ts|cjs)$' },
      to: {},
    },
    {
      name: 'resolvable',
      comment: 'An import that the tool cannot follow is an import that no fence sees.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^[.]out/' },
    // Otherwise type imports pass unseen.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.cjs', '.js', '.json', '.d.ts'],
    },
  },
};
