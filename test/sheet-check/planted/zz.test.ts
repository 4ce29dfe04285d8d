import { test } from "vitest";
import { count } from "./count";

test("x", { timeout: 900_000 }, async () => {
  const t = Date.now();
  const { sound, slips, notes } = await count([101, 102, 103]);
  console.log(`${Date.now() - t} ms; sound ${sound.sheets}: ${sound.alarms.length}\n${sound.alarms.join("\n")}`);
  console.log(
    slips
      .map(({ slip, planted, found, missed, alarms }) => `${planted}\t${found}\t${missed}\t${alarms}\t${slip}`)
      .join("\n"),
  );
  console.log(notes.join("\n"));
});
