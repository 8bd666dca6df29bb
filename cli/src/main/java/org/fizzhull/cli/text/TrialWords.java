package org.fizzhull.cli.text;

import org.fizzhull.learn.TrialFit;
import org.fizzhull.quantity.Decimals;

/** How a trial lies in what the finished bench expects of it, for the bench file and the answer of {@code learn}. Stateless. */
public final class TrialWords {
    private static final double PERCENT = 100;

    private TrialWords() {}

    /** {@code floated 97 %, fizz_s +0.4, lift_g -1.2}: chance of the result, then standard deviations off. */
    public static String of(TrialFit fit) {
        StringBuilder text = new StringBuilder(fit.result().word())
                .append(' ')
                .append(Math.round(PERCENT * fit.chance()))
                .append(" %");
        for (TrialFit.Sign sign : fit.signs()) {
            text.append(", ")
                    .append(sign.column())
                    .append(sign.off() < 0 ? " " : " +")
                    .append(Decimals.text(Math.rint(10 * sign.off()) / 10, 2));
        }
        return text.toString();
    }
}
