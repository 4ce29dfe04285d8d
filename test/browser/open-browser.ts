export * from "../../src/build/open-browser";
