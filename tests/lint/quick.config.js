import whole from './eslint.config.js';

/** Without the rules that ask the compiler: they take most of the time, and `npm test` has them. */
const quick = whole.filter(({ languageOptions }) => !languageOptions?.parserOptions?.projectService);

export default quick;
