package org.fizzhull.recipe;

import java.util.Map;

/** An invented acid, as a recipe file describes an ingredient of its own: none that the table knows has its molar mass. */
public final class HarbourAcid {
    public static final String NAME = "harbour acid";

    /** What is said of it. */
    public static final Map<String, String> SAID = Map.of(
            "role", "acid",
            "true density", "1.6 g/cm3",
            "loose density", "0.8 g/cm3",
            "molar mass", "150 g/mol",
            "acid groups", "2",
            "grain size", "300 um");

    private HarbourAcid() {}
}
