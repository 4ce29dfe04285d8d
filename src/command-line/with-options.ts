/**
 * Does the work of a command by its options; where words given are no options, or help is asked for, says that instead.
 * Gives the status to end with.
 */
export function withOptions<Options extends { readonly help: boolean }, Status>(
  options: Options | string,
  usage: string,
  work: (options: Options) => Status,
): Status | number {
  if (typeof options === "string") {
    console.error(options);
    return 2;
  }
  if (options.help) {
    console.log(usage);
    return 0;
  }
  return work(options);
}
