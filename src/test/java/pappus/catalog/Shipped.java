package pappus.catalog;

import java.util.List;

/** The shipped catalogue, read once for all tests of a process. */
public final class Shipped {
  /** With the place of every part. */
  public static final ReadCatalog READ = CatalogReader.read(List.of(CatalogFolder.shipped()));

  public static final Catalog CATALOG = READ.catalog();

  private Shipped() {}
}
