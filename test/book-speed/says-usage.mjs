// Says at the end what a process has used, on its error output.
process.on("exit", () => {
  const { user, system } = process.cpuUsage();
  process.stderr.write(`processor ${Math.round((user + system) / 1000)} ms\n`);
});
