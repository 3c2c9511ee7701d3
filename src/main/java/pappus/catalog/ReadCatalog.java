package pappus.catalog;

import java.util.List;
import pappus.files.Fingerprint;

/**
 * A catalogue and what it was read from.
 *
 * @param inputs every file, in the order of reading
 * @param replacements every part that took the place of an earlier one
 */
public record ReadCatalog(
    Catalog catalog, List<Fingerprint> inputs, List<Replacement> replacements) {}
