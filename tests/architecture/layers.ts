import type { Import } from './imports';

/** A layer of the house: what it may import of ours and from outside. It may always import itself. */
export type Layer = {
  readonly name: string;
  readonly below: readonly string[];
  readonly packages: readonly string[];
};

/** Core's folders from the ground up: each may import those before it. Advice is last, so nothing that judges leans on it. */
const coreFolders = [
  'units',
  'geometry',
  'stock',
  'roof',
  'mechanics',
  'instruments',
  'faults',
  'level',
  'site',
  'order',
  'score',
  'hands',
  'advice',
].map((folder) => `core/${folder}`);

const coreLayers: readonly Layer[] = coreFolders.map((name, i) => ({
  name,
  below: coreFolders.slice(0, i),
  packages: [],
}));

const upon = (name: string, below: readonly string[], packages: readonly string[] = []): Layer => ({
  name,
  below: [...coreFolders, ...below],
  packages,
});

const everything = ['content', 'session', 'records', 'present'];
const seen = ['scenes', 'panels', 'audio'];

/** Who may import whom. Nobody's row names main, tt or dev, so nothing imports them. */
export const layers: readonly Layer[] = [
  ...coreLayers,
  upon('content', [], ['zod', '@noble/hashes', 'canonicalize', 'fflate']),
  upon('session', ['content'], ['idb', '@preact/signals-core']),
  upon('records', ['content', 'session'], ['idb']),
  upon('present', [], ['uqr']),
  upon('scenes', ['present', 'session'], ['phaser']),
  upon('panels', ['present', 'session', 'content', 'records'], ['preact', '@preact/signals-core', 'uqr']),
  upon('audio', ['present', 'session'], ['howler', '@preact/signals-core']),
  upon('tt', everything, ['node:']),
  upon('dev', [...everything, ...seen], ['preact', '@preact/signals-core']),
  upon('main', [...everything, ...seen], ['preact', '@preact/signals-core']),
];

/** Breaks that stand for now, each as `from → to`. It may only get shorter; an entry that no longer breaks fails. */
export const exceptions: readonly string[] = [];

const layerOf = (path: string): string | undefined => {
  const [src, folder, inner, file] = path.split('/');
  if (src !== 'src' || folder === undefined) return undefined;
  if (inner === undefined) return folder.startsWith('main.') || folder === 'main' ? 'main' : undefined;
  return folder === 'core' && file !== undefined ? `core/${inner}` : folder;
};

const isPackage = (to: string): boolean => !to.startsWith('src/') && !to.startsWith('..');

const allowed = ({ from, to }: Import, table: readonly Layer[]): boolean => {
  const layer = table.find(({ name }) => name === layerOf(from));
  if (!layer) return false;
  if (isPackage(to)) {
    return layer.packages.some(
      (name) => to === name || to.startsWith(name.endsWith(':') ? name : `${name}/`),
    );
  }
  const other = layerOf(to);
  return other !== undefined && (other === layer.name || layer.below.includes(other));
};

/** What breaks the table, and which exceptions no longer do. */
export const judgeImports = (
  imports: readonly Import[],
  table: readonly Layer[],
  excepted: readonly string[],
): { readonly broken: readonly string[]; readonly stale: readonly string[] } => {
  const breaks = imports.filter((one) => !allowed(one, table)).map(({ from, to }) => `${from} → ${to}`);
  return {
    broken: [...new Set(breaks)].filter((one) => !excepted.includes(one)),
    stale: excepted.filter((one) => !breaks.includes(one)),
  };
};
