package pappus.catalog;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Records as they stand in files, for tests. */
final class Examples {
  private Examples() {}

  /** A motor that is in order; fields stand one a line, from the id on the second line. */
  static String motor(String id) {
    return """
        {
          "id": "%s",
          "maker": "Example",
          "name": "Motor",
          "price": {"amount": 19.90, "currency": "EUR"},
          "sold": {"unit": "each", "pieces": 1},
          "mass": {"grams": 12.5, "known": "measured"},
          "statorDiameterMillimetres": 14,
          "statorHeightMillimetres": 4.5,
          "speedConstantRpmPerVolt": 3500,
          "speedConstantReading": "label",
          "resistanceMilliohms": 120,
          "resistanceReading": "winding",
          "noLoadCurrentAmps": 0.6,
          "noLoadVolts": 10,
          "cells": {"from": 2, "to": 4},
          "boltCirclesMillimetres": [12],
          "screwCount": 4,
          "screw": "M2",
          "propellerSeat": "nut-m5",
          "bellDiameterMillimetres": 18,
          "heightMillimetres": 15,
          "leadsIncludedMillimetres": 100,
          "leadGauge": 24,
          "figures": "maker",
          "source": "an example"
        }""".formatted(id);
  }

  /** A strap that is in order, on one line. */
  static String strap(String id) {
    return """
        {"id": "%s", "maker": "Example", "name": "Strap", "price": {"amount": 2, "currency": "EUR"}, \
        "sold": {"unit": "each", "pieces": 1}, "mass": {"grams": 4, "known": "measured"}, \
        "widthMillimetres": 15, "lengthMillimetres": 200, "source": "an example"}""".formatted(id);
  }

  /** A file of one list; the first record begins on the second line. */
  static String file(String list, String... records) {
    return Stream.of(records)
        .collect(Collectors.joining(",\n", "{\"" + list + "\": [\n", "\n]}\n"));
  }
}
