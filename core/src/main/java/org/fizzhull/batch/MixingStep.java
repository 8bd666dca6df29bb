package org.fizzhull.batch;

import java.util.List;

/**
 * One line of the order of mixing, to tick off; {@link MixingOrder#of} has them in order.
 *
 * @param text what to do
 * @param ingredients names of what goes in here; empty for a step that only handles the mix
 * @param caution one line where the action happens, or empty
 * @param mayStop whether the work may wait after it: only once the dry powders are sifted
 */
public record MixingStep(String text, List<String> ingredients, String caution, boolean mayStop) {}
