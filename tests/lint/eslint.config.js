import { readFileSync } from 'node:fs';
import tseslint from 'typescript-eslint';

/** How our code reads, as far as a machine can tell. Layout is prettier's; layers and sums are in tests/architecture. */

const bans = JSON.parse(readFileSync(new URL('../architecture/core-bans.json', import.meta.url), 'utf8'));

const oneOf = (words) => `/^(${words.join('|')})$/`;

const shape = [
  { selector: 'ExportDefaultDeclaration', message: 'Exports have names.' },
  { selector: 'TSEnumDeclaration', message: 'A closed union of strings survives JSON; an enum does not.' },
  {
    selector: 'TSModuleDeclaration:not([global=true]):not([id.type="Literal"])',
    message: 'Files part the code, not namespaces.',
  },
  {
    selector: 'TSInterfaceDeclaration:not(TSModuleBlock TSInterfaceDeclaration)',
    message: 'Use type. Only adding to what others declared needs an interface.',
  },
  { selector: 'Decorator', message: 'No decorators.' },
  { selector: 'FunctionDeclaration:not([generator=true])', message: 'Use a const arrow function.' },
  { selector: 'ExportAllDeclaration', message: 'No barrels: import from the file that has it.' },
];

const noClass = { selector: 'ClassDeclaration', message: 'Classes are for the session and the scenes only.' };

const stateful = {
  selector:
    'TSTypeAliasDeclaration TSPropertySignature:not([readonly=true]):not(TSTypeParameterInstantiation *)',
  message: 'Everything in core is readonly.',
};

const exact = [
  {
    selector: `MemberExpression[object.name="Math"]:not([property.name=${oneOf(bans.allowedMath)}])`,
    message: 'Not the same on every engine.',
  },
  { selector: 'VariableDeclarator[init.name="Math"]', message: 'Name each use of Math where it stands.' },
  { selector: 'BinaryExpression[operator="**"]', message: 'Powers differ between engines: multiply.' },
  { selector: 'AssignmentExpression[operator="**="]', message: 'Powers differ between engines: multiply.' },
  {
    selector: `MemberExpression[property.name=${oneOf(bans.members)}]`,
    message: 'Depends on where the machine stands.',
  },
];

const everywhere = {
  eqeqeq: 'error',
  'no-var': 'error',
  'prefer-const': 'error',
  'prefer-arrow-callback': 'error',
  'no-param-reassign': 'error',
  'no-implicit-coercion': 'error',
  'max-params': 'off',
  'max-lines': ['error', { max: 400 }],
  'no-restricted-syntax': ['error', ...shape, noClass],
  '@typescript-eslint/max-params': ['error', { max: 3 }],
  '@typescript-eslint/no-explicit-any': 'error',
  '@typescript-eslint/no-non-null-assertion': 'error',
  '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
  '@typescript-eslint/array-type': ['error', { default: 'array' }],
};

// Asked of the compiler, so these cost time: only what has caught real mistakes in code like ours.
const typed = {
  '@typescript-eslint/no-floating-promises': 'error',
  '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
  '@typescript-eslint/await-thenable': 'error',
  '@typescript-eslint/switch-exhaustiveness-check': [
    'error',
    { considerDefaultExhaustiveForUnions: true, requireDefaultForNonUnion: true },
  ],
};

const atOnce = { selector: ':function[async=true]', message: 'Core, content and present answer at once.' };

const linted = tseslint.config(
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.ts', '**/*.tsx'],
    languageOptions: {
      parser: tseslint.parser,
    },
    plugins: { '@typescript-eslint': tseslint.plugin },
    rules: everywhere,
  },
  {
    // The rest holds no promises, and its switches return, which the compiler follows by itself.
    files: ['src/**/*.ts', 'src/**/*.tsx', 'tests/browser/**/*.ts'],
    ignores: ['src/core/**', 'src/content/**', 'src/present/**'],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: process.cwd() } },
    rules: typed,
  },
  {
    files: ['src/**'],
    rules: { 'max-lines-per-function': ['error', { max: 60, IIFEs: true }] },
  },
  {
    // A row of a table of cases names as many columns as it has; what is missing in a test fails it anyway.
    files: ['tests/**/*.test.ts'],
    rules: { '@typescript-eslint/max-params': 'off', '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['src/session/**', 'src/scenes/**'],
    rules: { 'no-restricted-syntax': ['error', ...shape] },
  },
  {
    files: ['src/content/**', 'src/present/**'],
    rules: { 'no-restricted-syntax': ['error', ...shape, noClass, atOnce] },
  },
  {
    files: ['src/core/**'],
    rules: {
      'no-restricted-syntax': ['error', ...shape, noClass, stateful, ...exact, atOnce],
      'no-restricted-globals': ['error', ...bans.globals],
    },
  },
);

export default linted;
