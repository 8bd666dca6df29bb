package org.fizzhull.validation.check;

import java.util.Map;

/** Three invented powders, solid fractions .55/.46/.34 loose, .61/.62/.50 tapped, that validation/reference/packing.py has too. */
final class InventedPowders {
    static final Map<String, String> CITRIC = Map.of(
            "true density", "1.665 g/cm3",
            "loose density", "0.91575 g/cm3",
            "tapped density", "1.01565 g/cm3",
            "grain size", "400 um");
    static final Map<String, String> BICARBONATE = Map.of(
            "true density", "2.20 g/cm3",
            "loose density", "1.012 g/cm3",
            "tapped density", "1.364 g/cm3",
            "grain size", "100 um");
    static final Map<String, String> STARCH = Map.of(
            "true density", "1.48 g/cm3",
            "loose density", "0.5032 g/cm3",
            "tapped density", "0.74 g/cm3",
            "grain size", "15 um");
    static final Map<String, String> WATER =
            Map.of("role", "water", "liquid density", "1 g/cm3", "water share", "100 %");

    private InventedPowders() {}
}
