/** Of every formula of a workbook, in milliseconds. */
export async function timeOfCalculation(book: { calculate(): Promise<void> }): Promise<number> {
  const start = performance.now();
  await book.calculate();
  return performance.now() - start;
}
