import { parOf, type Par } from './provedJob';
import type { Read } from '../content/complaint';

/** Tries a job apart from the page, which answers meanwhile. */

export type JobNews = { readonly share: number } | { readonly done: Read<Par> };

const page = self as unknown as { readonly postMessage: (news: JobNews) => void };

self.addEventListener('message', (event: MessageEvent<unknown>) =>
  page.postMessage({ done: parOf(event.data, (share) => page.postMessage({ share })) }),
);
