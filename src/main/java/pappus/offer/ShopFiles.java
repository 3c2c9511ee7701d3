package pappus.offer;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Catalog;
import pappus.catalog.ShelfEntry;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;

/**
 * What a shop brings to an offer.
 *
 * @param stock what it has, and its prices; empty where it was not told
 * @param stockFile where that stands; empty where it was not told
 */
public record ShopFiles(Shop shop, Optional<List<ShelfEntry>> stock, String stockFile) {
  /**
   * Reads both files.
   *
   * @param currency of the catalogue, which must be that of the shop and its stock
   * @throws InputException with all that is wrong in both
   */
  public static ShopFiles read(Path settings, @Nullable Path stockFile, String currency) {
    var problems = new Problems();
    var shop = Shop.read(settings, currency, problems);
    var stock = Optional.ofNullable(stockFile)
        .flatMap(file -> Source.find(file, problems))
        .map(source -> StockList.read(source, currency, problems));
    problems.throwIfAny();
    return new ShopFiles(shop.orElseThrow(), stock, stockFile == null ? "" : stockFile.toString());
  }

  /** What it has of parts that are in no catalogue: its list is longer than ours. */
  public List<Problem> strangers(Catalog catalog) {
    return stock.orElse(List.of()).stream()
        .filter(entry -> catalog.part(entry.id()).isEmpty())
        .map(entry -> Problem.ofFile(
            stockFile, "%s is in no catalogue: it counts for nothing.".formatted(entry.id())))
        .toList();
  }

  /** What an offer has to do without, for the user. */
  public Optional<String> missing() {
    if (stock.isEmpty()) {
      return Optional.of(
          "Without --stock nothing is said of what is in stock, and prices are the catalogue's.");
    }
    return StockList.hasPrices(stock.get())
        ? Optional.empty()
        : Optional.of(
            stockFile + " has no prices in a column price: those of the catalogue are taken.");
  }
}
