package org.fizzhull.batch;

import java.util.List;

/**
 * One line of the order of mixing, to tick off.
 *
 * @param text what to do
 * @param ingredients names of what goes in here
 * @param caution one line where the action happens, or empty
 * @param mayStop whether the work may wait after it
 */
public record MixingStep(String text, List<String> ingredients, String caution, boolean mayStop) {}
