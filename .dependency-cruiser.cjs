// The one-way street of lib/: a folder may import only folders named before it (DEVELOPERS.md).
const order = [
  'problem',
  'words',
  'units',
  'time',
  'sun',
  'sky',
  'climate',
  'opening',
  'glazing',
  'blind',
  'schedule',
  'room',
  'project',
  'study',
  'decide',
  'search',
  'sure',
  'findings',
];

const oneWay = order.slice(0, -1).map((folder, i) => ({
  name: `lib-${folder}-imports-no-later-folder`,
  severity: 'error',
  from: { path: `^lib/${folder}/` },
  to: { path: `^lib/(${order.slice(i + 1).join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...oneWay,
    {
      name: 'lib-knows-no-src',
      severity: 'error',
      from: { path: '^lib/' },
      to: { path: '^(src|tests)/' },
    },
    {
      name: 'lib-knows-no-node-no-dom-library',
      severity: 'error',
      from: { path: '^lib/' },
      to: { path: '^(node:|fs$|path$|svelte|node_modules/(svelte|d3))' },
    },
    {
      name: 'enter-a-folder-by-its-face',
      comment: 'Other folders use index.ts only.',
      severity: 'error',
      from: { path: '^lib/([^/]+)/' },
      to: { path: '^lib/[^/]+/', pathNot: ['^lib/$1/', '^lib/[^/]+/index\\.ts$'] },
    },
    {
      name: 'src-enters-lib-by-its-faces',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^lib/[^/]+/', pathNot: ['^lib/[^/]+/index\\.ts$'] },
    },
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'app-leaves-the-command-line-alone',
      severity: 'error',
      from: { path: '^src/(app|worker)/' },
      to: { path: '^src/cli/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
  },
};
