package pappus.cli;

/** Ways to print an answer that is no table. */
enum TextOrJson {
  TEXT,
  JSON
}
