// Style and fences. The fences say what each layer may not reach for; fences.test.ts proves that they bite.
// A later block replaces a rule set by an earlier one for the same files, so each layer states its whole list.
import hooks from 'eslint-plugin-react-hooks';
import globals from 'globals';
import tseslint from 'typescript-eslint';

const namedExports = {
  selector: 'ExportDefaultDeclaration',
  message: 'Named exports only: the name is the id of the file.',
};
const noDynamicImport = {
  selector: 'ImportExpression',
  message: 'Import at the top: a dynamic import hides from the fences.',
};
const noLocale = {
  selector: 'MemberExpression[property.name=/^(localeCompare|toLocale.*)$/]',
  message: 'Same input, same bytes everywhere: compare and format without the locale of the machine.',
};
const noTypeImport = {
  selector: 'TSImportType',
  message: 'Import the type at the top: an inline import type hides from the fences.',
};

const outside = (names, message) => names.map((name) => ({ name, message }));

const windowAndUi = {
  regex: '^(react|react-dom|react-konva|konva|zustand)(/|$)',
  message: 'Only the window draws.',
};
const nodeModules = { regex: '^node:', message: 'Only electron/ and tests touch the machine.' };
const bareNode = {
  regex: '^(fs|path|os|crypto|child_process|http|https|net|url|util|stream|events|buffer|process)(/.*)?$',
  message: 'Only electron/ and tests touch the machine; and there as node:*.',
};
const electronApi = {
  regex: '^electron(/|$)',
  message: 'Only electron/main and electron/preload know Electron.',
};
const renderer = { regex: '(^|/)renderer/|^@latchwork/renderer', message: 'Nothing imports the window.' };
const electronLayer = {
  regex: '(^|/)electron/|^@latchwork/electron',
  message: 'Talk to the machine through core/bridge.',
};
const coreByPath = {
  regex: '^(\\.\\./)+core/',
  message: "Import core as '@latchwork/core/<path>'.",
};

export default tseslint.config(
  { ignores: ['**/node_modules/', '.out/', 'tests/architecture/bad/'] },
  {
    files: ['**/*.{ts,tsx,js,mjs,cjs}'],
    extends: [tseslint.configs.recommended],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'max-lines': ['error', { max: 500, skipBlankLines: false, skipComments: false }],
      eqeqeq: ['error', 'always'],
      'no-var': 'error',
      'prefer-const': 'error',
      'no-console': 'error',
      'no-eval': 'error',
      'no-restricted-syntax': ['error', namedExports],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
    },
  },
  {
    // Pure: same input, same output. Ids and dates are arguments.
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: '^(?!\\.{1,2}/|zod$|immer$)',
              message: 'core imports core, zod and immer, nothing else.',
            },
            { regex: '(^|/)(renderer|electron|tests)/', message: 'core is the lowest layer.' },
            { regex: '\\.(ts|js)$', message: 'Import without the extension.' },
          ],
        },
      ],
      'no-restricted-globals': [
        'error',
        ...outside(['Date', 'performance'], 'core has no clock: the date is an argument.'),
        ...outside(['crypto'], 'core has no chance: ids are arguments.'),
        ...outside(['Intl'], 'core has no locale: same input, same bytes.'),
        ...outside(
          [
            'console',
            'process',
            'window',
            'document',
            'navigator',
            'fetch',
            'localStorage',
            'globalThis',
            'Buffer',
          ],
          'core touches neither the window nor the machine.',
        ),
        ...outside(['setTimeout', 'setInterval', 'queueMicrotask'], 'core does not wait: it computes.'),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'core has no chance: ids are arguments.' },
      ],
      'no-restricted-syntax': ['error', namedExports, noDynamicImport, noLocale, noTypeImport],
    },
  },
  {
    // Loops over arrays with bounds of their own: a lookup there cannot miss, and a check would cost.
    files: ['core/derive/**/*.ts', 'core/calc/**/*.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['renderer/**/*.{ts,tsx}'],
    extends: [hooks.configs.flat['recommended-latest']],
    languageOptions: { globals: globals.browser },
    rules: {
      // About the React Compiler, which is not used here.
      'react-hooks/incompatible-library': 'off',
      'no-restricted-imports': [
        'error',
        { patterns: [nodeModules, bareNode, electronApi, electronLayer, coreByPath] },
      ],
      'no-restricted-globals': [
        'error',
        ...outside(['process', 'Buffer', 'require', '__dirname', '__filename'], 'The window has no Node.'),
        ...outside(['alert', 'confirm', 'prompt'], 'Use the dialogs of renderer/ui.'),
      ],
    },
  },
  {
    files: ['electron/**/*.ts'],
    languageOptions: { globals: globals.node },
    rules: {
      'no-restricted-imports': [
        'error',
        { patterns: [windowAndUi, bareNode, electronApi, renderer, coreByPath] },
      ],
    },
  },
  {
    files: ['electron/main/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          paths: [
            {
              name: 'electron',
              importNames: ['ipcMain', 'ipcRenderer'],
              message: 'Register channels in main/register.ts.',
            },
          ],
          patterns: [windowAndUi, bareNode, renderer, coreByPath],
        },
      ],
    },
  },
  {
    files: ['electron/main/register.ts'],
    rules: {
      'no-restricted-imports': ['error', { patterns: [windowAndUi, bareNode, renderer, coreByPath] }],
    },
  },
  {
    // Sandboxed, and the only code that sees both worlds: it may know the channel names and nothing more.
    files: ['electron/preload/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: '^(?!(electron|@latchwork/core/bridge/channels)$)',
              message: 'The preload imports the channel names and electron, nothing else.',
            },
          ],
        },
      ],
    },
  },
  {
    files: ['electron/start/*.mjs', 'tests/*.mjs'],
    languageOptions: { globals: globals.node },
    rules: { 'no-console': 'off' },
  },
  {
    files: ['tests/**/*.{ts,tsx}'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off', 'no-console': 'off' },
  },
  {
    files: ['**/*.config.{ts,js,cjs,mjs}'],
    languageOptions: { globals: globals.node },
    rules: {
      'no-restricted-syntax': 'off',
      'no-restricted-imports': 'off',
      '@typescript-eslint/no-require-imports': 'off',
    },
  },
);
