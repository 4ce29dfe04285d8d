/** The jobs in the order of the maker's day. Every number to start with is invented, for an invented lot. */
import { balanceFit } from "../core/balance/balance-fit";
import { stageBalance } from "../core/balance/stage-balance";
import { dust, paidWeight } from "../core/cautions";
import { chargeCount } from "../core/charges/charge-count";
import { chargePlan } from "../core/charges/charge-plan";
import { moistureNow } from "../core/moisture/moisture-now";
import { packCheck } from "../core/packing/pack-check";
import { packPlan } from "../core/packing/pack-plan";
import { seasonTable } from "../core/season/season-table";
import { dryingSteps } from "../core/targets/drying-steps";
import { firingTarget } from "../core/targets/firing-target";
import { lossMeanings } from "../core/targets/loss-meanings";
import { targetWeight } from "../core/targets/target-weight";
import { dayPlan } from "../core/time/day-plan";
import { dryingTime } from "../core/time/drying-time";
import { turnTimes } from "../core/time/turn-times";
import { finishedBand } from "../core/yields/finished-band";
import { finishedCheck } from "../core/yields/finished-check";
import type { Job } from "./job";

const planTheCharges: Job = {
  id: "charges",
  functions: [chargeCount, chargePlan],
  inputs: { weight: "936", moisture: "74.5 %", panLoad: "240" },
  more: ["maxLoad", "readability"],
  lists: [{ targets: ["28 %", "48 %"], targetKinds: ["water", "moisture"] }],
  spareRows: 4,
};

const readTheScale: Job = {
  id: "scale",
  functions: [firingTarget, lossMeanings],
  inputs: { weight: "240", moisture: "74.5 %", loss: "28 %", lossOf: "water" },
};

const moistNow: Job = {
  id: "moisture",
  functions: [moistureNow],
  inputs: { startWeight: "640", startMoisture: "74 %", weightNow: "402", dryLoss: "" },
};

const routeToTea: Job = {
  id: "route",
  functions: [dryingSteps],
  inputs: { weight: "936", moisture: "74.5 %" },
  lists: [
    {
      names: "steps",
      targets: ["28 %", "48 %", "34 %", "6 %"],
      targetKinds: ["water", "moisture", "moisture", "moisture"],
    },
  ],
};

const finishedAddsUp: Job = {
  id: "finished",
  functions: [finishedCheck, finishedBand],
  inputs: {
    freshWeight: "1180",
    freshMoisture: "75 %",
    finishedMoisture: "6 %",
    finishedWeight: "291",
    highLoss: "12 %",
  },
  more: ["removed", "removedMoisture", "lowLoss", "weightError", "freshMoistureError", "finishedMoistureError"],
  cautions: [paidWeight],
};

const turning: Job = {
  id: "turns",
  functions: [turnTimes],
  inputs: { start: "13:40", duration: "3:20", interval: "0:25" },
  spareRows: 12,
};

const planTheDay: Job = {
  id: "day",
  functions: [chargeCount, dayPlan],
  feeds: { charges: chargeCount },
  inputs: { weight: "1680", panLoad: "280", firstStart: "9:15", pans: "2", breakStart: "12:45", breakEnd: "13:30" },
  more: ["maxLoad", "readability"],
  lists: [{ firingTimes: ["0:22", "0:18", "0:15"], rests: ["2:30", "1:45", ""] }],
  spareRows: 12,
};

const readyWhen: Job = {
  id: "ready",
  functions: [targetWeight, dryingTime],
  feeds: { targetWeight },
  inputs: { weight: "420", moisture: "40 %", targetMoisture: "5 %", endWeight: "258.5" },
  lists: [
    {
      times: ["9:00", "9:20", "9:40", "10:00", "10:20", "", "", "", "", ""],
      weights: ["420", "381.5", "351", "327.5", "309.5", "", "", "", "", ""],
    },
  ],
};

const fillTheTins: Job = {
  id: "tins",
  functions: [packPlan, packCheck],
  inputs: { finishedWeight: "1842.6", scatter: "0.15", readability: "0.1", nominal: "50", tolerance: "4.5" },
  more: ["finishedMoisture", "driestMoisture", "packages"],
  lists: [
    { nominals: ["50", "20"], units: ["30", ""] },
    { netWeights: ["", "", "", "", "", "", "", "", "", "", "", ""] },
  ],
};

const season: Job = {
  id: "season",
  functions: [seasonTable],
  inputs: {},
  lists: [
    {
      groups: "plots",
      freshWeights: ["1320", "960", "1105", "1240"],
      finishedWeights: ["306", "217", "262", ""],
    },
    { areaNames: ["", ""], areas: ["", ""] },
  ],
  spareRows: 6,
};

const balance: Job = {
  id: "balance",
  functions: [stageBalance],
  inputs: {},
  lists: [
    {
      stages: "stages",
      weights: ["980", "845", "452", "242"],
      moistures: ["75.2 %", "71.3 %", "49 %", "5.8 %"],
      removed: ["", "", "18", ""],
    },
  ],
  cautions: [dust],
};

const fit: Job = {
  id: "fit",
  functions: [balanceFit],
  inputs: { weightErrors: "0.5", moistureErrors: "1" },
  more: ["dryLosses", "confidence"],
  lists: balance.lists ?? [],
};

export const jobs: readonly Job[] = [
  planTheCharges,
  readTheScale,
  moistNow,
  routeToTea,
  finishedAddsUp,
  turning,
  planTheDay,
  readyWhen,
  fillTheTins,
  season,
  balance,
  fit,
];
