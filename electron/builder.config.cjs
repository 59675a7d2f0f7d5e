// Packages the desktop program. Everything it needs is bundled, so no package travels along.
const { devDependencies } = require('./package.json');

module.exports = {
  appId: 'org.latchwork.latchwork',
  productName: 'Latchwork',
  copyright: 'MIT licence',
  electronVersion: devDependencies.electron,
  directories: { output: '.out/dist', buildResources: 'assets' },
  files: [
    'package.json',
    '.out/electron/main.cjs',
    '.out/electron/preload.cjs',
    '.out/renderer/**/*',
    'assets/catalogues/**/*',
    'assets/fonts/**/*',
    'assets/third-party-licences.txt',
    'assets/sbom.cdx.json',
    'demo-projects/**/*',
    '!**/node_modules/**',
    '!**/*.map',
  ],
  asar: true,
  npmRebuild: false,
  nodeGypRebuild: false,
  publish: null,
  electronFuses: {
    runAsNode: false,
    enableCookieEncryption: true,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    loadBrowserProcessSpecificV8Snapshot: false,
    grantFileProtocolExtraPrivileges: false,
  },
  fileAssociations: [
    {
      ext: 'latchwork',
      name: 'Latchwork project',
      description: 'Latchwork project',
      mimeType: 'application/x-latchwork',
      role: 'Editor',
    },
  ],
  linux: { target: ['AppImage', 'tar.gz'], category: 'Engineering' },
  mac: { target: ['dmg'], category: 'public.app-category.developer-tools' },
  win: { target: ['nsis'] },
};
