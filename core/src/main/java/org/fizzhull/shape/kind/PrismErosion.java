package org.fizzhull.shape.kind;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;

/**
 * Sharp-edged prism over an outline: the side and the flats move in on their own, V = a(d) (H - n d) with n open flats.
 */
record PrismErosion(Outline outline, double height, int openFlats) implements Erosion {
    static DepthProfile profile(Outline outline, double height, Exposure exposure) {
        int open = exposure == Exposure.TRAY ? 1 : 2;
        double[] breaks = outline.breaks();
        double deepest = height / open;
        int n = 0;
        while (n < breaks.length && breaks[n] < deepest) {
            n++;
        }
        double[] all = Arrays.copyOf(breaks, Math.min(n + 1, breaks.length));
        if (n < breaks.length) {
            all[n] = deepest;
        }
        return ProfileTable.graded(new PrismErosion(outline, height, open), all);
    }

    @Override
    public double volume(double d) {
        return outline.area(d) * (height - openFlats * d);
    }

    @Override
    public double front(double d) {
        return outline.length(d) * (height - openFlats * d) + openFlats * outline.area(d);
    }
}
