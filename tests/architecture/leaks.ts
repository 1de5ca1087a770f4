import type { Source } from './files';

/** Folders that exist on one machine only, as paths begin with them. */
const machinePath = /(?<![\w.~)}\]])\/(?:home|root|Users|work|mnt|opt|tmp|var\/folders)\/\w|\b[A-Z]:\\\\?\w/;

/** Hosts packages come from: which one is used is a setting of the machine, not of the project. */
const registryHost = new RegExp(
  [
    ['registry', 'npmjs', 'org'],
    ['registry', 'yarnpkg', 'com'],
    ['npm', 'pkg', 'github', 'com'],
    ['pypi', 'org'],
    ['proxy', 'golang', 'org'],
  ]
    .map((parts) => parts.join('\\.'))
    .join('|'),
);

/** Lines of a text that would tie the project to one machine. */
export const leaksIn = ({ path, text }: Source): readonly string[] =>
  text
    .split('\n')
    .flatMap((line, i) => (machinePath.test(line) || registryHost.test(line) ? [`${path}:${i + 1}`] : []));
