/**
 * What the pane keeps in the browser between visits. A browser that forbids storage, or what is no longer
 * understood, gives the usual instead: nothing depends on it.
 */
export interface Kept<Value> {
  read(): Value;
  write(value: Value): void;
}

/** What checks it when it is read again, and throws. */
interface Schema<Value> {
  parse(kept: unknown): Value;
}

export function kept<Value>(name: string, schema: Schema<Value>, usual: Value): Kept<Value> {
  const key = `tea-mass-balance ${name}`;
  return {
    read() {
      try {
        const text = localStorage.getItem(key);
        return text === null ? usual : schema.parse(JSON.parse(text));
      } catch {
        return usual;
      }
    },
    write(value) {
      try {
        localStorage.setItem(key, JSON.stringify(value));
      } catch {}
    },
  };
}
