package org.fizzhull.pressing;

/**
 * How much liquid a mix takes: the amounts at which a piece holds rather than crumbles or is too wet. With draws, an
 * amount lies inside where at least as many draws hold as crumble and as are too wet, so that the window and the
 * verdict on the recipe's own amount never disagree. All amounts are kg of the recipe's liquid per kg of dry powder,
 * its proportions kept.
 *
 * @param low least inside; not below {@code high} where no amount is inside
 * @param high most inside
 * @param best amount at which most hold, its middle where several do
 * @param share of the draws that hold at the best, 0 to 1
 */
public record LiquidWindow(double low, double high, double best, double share) {
    /** {@return whether no amount is inside} */
    public boolean isEmpty() {
        return !(low < high);
    }
}
