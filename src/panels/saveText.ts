/** Offers a text as a file to keep. */
export const saveText = (file: {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([file.text], { type: file.type }));
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};
