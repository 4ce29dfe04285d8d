import webpack, { type Configuration } from "webpack";
import { bundledPackages } from "./bundled-packages";

/** Gives the packages that the bundles hold code of. */
export function runWebpack(configuration: Configuration): Promise<readonly string[]> {
  return new Promise((done, failed) => {
    webpack(configuration, (problem, stats) => {
      if (problem) failed(problem);
      else if (stats === undefined) failed(new Error("the bundler gave no result"));
      else if (stats.hasErrors()) failed(new Error(stats.toString({ all: false, errors: true, colors: false })));
      else done(bundledPackages(stats.compilation));
    });
  });
}
