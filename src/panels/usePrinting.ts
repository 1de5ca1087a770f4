import { useEffect, useState } from 'preact/hooks';

/** Whether the page is being put on paper: black on white, whatever the light on screen. */
export const usePrinting = (): boolean => {
  const [printing, set] = useState(false);
  useEffect(() => {
    const paper = matchMedia('print');
    const onPaper = (): void => set(paper.matches);
    const before = (): void => set(true);
    paper.addEventListener('change', onPaper);
    addEventListener('beforeprint', before);
    addEventListener('afterprint', onPaper);
    return () => {
      paper.removeEventListener('change', onPaper);
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', onPaper);
    };
  }, []);
  return printing;
};
