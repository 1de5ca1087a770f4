import '../own.css';
import '../ownSheet.css';
import { CardScreen } from './cardScreen';
import { loadDraft } from './ownRoof';
import { RoofScreen } from './roofScreen';

/** What comes together when an own roof is first asked for. */
export const ownScreens = { CardScreen, RoofScreen, loadDraft };
