/** Running words with their fractions stacked: a number is a picture. A length never breaks inside. Read out as it was written. */
export const FiguredText = ({ text }: { readonly text: string }) => (
  <>
    {text.split(lengthPattern).map((part, i) =>
      i % 2 === 0 ? (
        part
      ) : (
        <span class="length" key={i}>
          <Length text={part} />
        </span>
      ),
    )}
  </>
);

const Length = ({ text }: { readonly text: string }) => {
  const [whole, num, den, rest] = text.split(fractionPattern);
  if (den === undefined) return <>{text}</>;
  return (
    <>
      {whole}
      <span class="hidden">{`${text.charAt((whole ?? '').length) === ' ' ? ' ' : ''}${num ?? ''}/${den}`}</span>
      <span class="frac" aria-hidden="true">
        <span>{num}</span>
        <span>{den}</span>
      </span>
      {rest}
    </>
  );
};

/** A length as running text has it: feet, inches and a fraction of them, or a number and its unit. */
const lengthPattern = /([-−]?(?:\d+' )?(?:\d+ )?\d+(?:\/\d+)?"|[-−]?\d+(?:\.\d+)? (?:mm|in)\b)/;

/** Sixteenths and their like, and the space before them that the stacked form does not need. */
const fractionPattern = /(?:(?<=\d) )?\b(\d{1,2})\/(\d{1,2})(?=")/;
