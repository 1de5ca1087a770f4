/** A way of getting hurt that the site stops. Each record in `rows` says when, why, how grave, and where that is published. */
export type DangerId =
  | 'underTheLoad'
  | 'letGoTooSoon'
  | 'topPlate'
  | 'tiedToUnbuilt'
  | 'handBehind'
  | 'bumpTrigger'
  | 'onePointHitch'
  | 'raiseUnderLoad'
  | 'propWithSomeoneUnder';
