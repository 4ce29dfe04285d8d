/** The command line: one formula and its answer, or a talk line by line. */
import { calc } from "./calc/command";

const { stdin, stdout } = process;

calc(process.argv.slice(2), {
  input: stdin,
  terminal: stdin.isTTY === true ? stdout : undefined,
  say: (line) => console.log(line),
  complain: (line) => console.error(line),
}).then((status) => {
  process.exitCode = status;
});
