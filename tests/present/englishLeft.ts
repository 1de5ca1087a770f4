/** Little words that no Spanish sentence has. What a file wrote itself stands in quotes or slashes and is left out. */
const little =
  /\b(the|and|of|with|leaves?|is|are|where|or|only|means|than|its|at|in|less|more|most|least|comes|left|on|out|from|nothing|beside|missing|file|link|roof|ridge|rafters?|wall|wing|dormer|slope|front|text|number|list|object)\b/i;

/** The English word that a Spanish sentence still has. */
export const englishLeft = (spanish: string): string | undefined =>
  little.exec(spanish.replace(/"[^"]*"|\/\^.*\$\//g, ''))?.[0];
