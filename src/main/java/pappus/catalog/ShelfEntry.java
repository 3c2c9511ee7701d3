package pappus.catalog;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** What a builder or a shop has of a part, and what it costs there; the part's record stays as it is. */
public record ShelfEntry(
    @JsonPropertyDescription("Id of the part, in whichever folder it stands.")
    String id,

    @JsonPropertyDescription("Pieces at hand, which cost nothing, 0 to 10000; absent: none.")
    @Nullable
    Integer owned,

    @JsonPropertyDescription(
        "Selling units that can be bought, 0 to 100000; absent: as many as wanted.")
    @Nullable
    Integer stock,

    @JsonPropertyDescription("Price of one selling unit; absent: that of the part's record.")
    @Nullable
    Money price,

    @JsonPropertyDescription("A remark for people; absent: none.") @Nullable
    String note) {
  public ShelfEntry {
    Require.name("id", id);
    if (owned != null) {
      Require.inRange("owned", owned, 0, 10_000);
    }
    if (stock != null) {
      Require.inRange("stock", stock, 0, 100_000);
    }
    if (owned == null && stock == null && price == null) {
      Require.refuse("owned must be there where stock and price are not, but none of them is.");
    }
  }
}
