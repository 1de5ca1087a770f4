/** A way of getting hurt that the site stops. Page: each record says when, why, how grave, and where that is published. */
export type DangerId = 'underTheLoad' | 'letGoTooSoon' | 'topPlate' | 'tiedToUnbuilt' | 'handBehind' | 'onePointHitch';
