import { writeFileSync } from 'node:fs';
import { rulesText } from './rulesText';

writeFileSync('src/core/score/RULES.md', rulesText());
