/** Running words with their fractions stacked: a number is a picture. Read out as it was written. */
export const FiguredText = ({ text }: { readonly text: string }) => (
  <>
    {text.split(fractionPattern).map((part, i) => {
      const [num, den] = i % 2 === 1 ? part.split('/') : [];
      if (den === undefined) return part;
      return (
        <span key={i}>
          <span class="hidden">{part}</span>
          <span class="frac" aria-hidden="true">
            <span>{num}</span>
            <span>{den}</span>
          </span>
        </span>
      );
    })}
  </>
);

/** Sixteenths and their like, and the space before them that the stacked form does not need. */
const fractionPattern = /(?:(?<=\d) )?\b(\d{1,2}\/(?:2|4|8|16|32))(?=")/;
