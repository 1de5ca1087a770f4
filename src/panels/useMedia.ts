import { useEffect, useState } from 'preact/hooks';

/** Whether the page is as the query says, now and as it changes. */
export const useMedia = (query: string): boolean => {
  const [is, set] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const list = matchMedia(query);
    const onChange = (): void => set(list.matches);
    onChange();
    list.addEventListener('change', onChange);
    return () => list.removeEventListener('change', onChange);
  }, [query]);
  return is;
};
