/** Gives a file to the browser, which saves it where it saves files. */
export function handOut(content: Blob, fileName: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
