import { dormerPart } from './sheetDormers';
import { layoutPart } from './sheetLayout';
import { blocksPart, carriesPart, gablesPart, tiesPart } from './sheetParts';
import { jacksPart, raftersPart, ridgePart, slantsPart } from './sheetRafters';
import type { RoofSheet, SheetAsked } from './sheetShape';
import { cautionsPart, nailsPart, stockPart, weightsPart } from './sheetStock';
import { roofFacts, roofTitle } from './title';

/** The sheet of a figured roof. */
export const roofSheet = (asked: SheetAsked): RoofSheet => ({
  title: roofTitle(asked),
  facts: roofFacts(asked),
  parts: [
    layoutPart(asked),
    ridgePart(asked),
    raftersPart(asked),
    slantsPart(asked),
    jacksPart(asked),
    dormerPart(asked),
    carriesPart(asked),
    blocksPart(asked),
    tiesPart(asked),
    gablesPart(asked),
    stockPart(asked),
    weightsPart(asked),
    nailsPart(asked),
    cautionsPart(asked),
  ].filter(({ rows, notes }) => rows.length + notes.length > 0),
});
