package org.fizzhull.shape.kind;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;

/**
 * Sharp-edged prism over an outline: the side and the flats move in on their own,
 * <pre>
 *   V(d) = a(d) (H - n d),   A(d) = l(d) (H - n d) + n a(d)
 * </pre>
 * with a(d), m2, the area of the outline moved in by d, l(d) = -a'(d), m, its length, H the height, m, and n the number
 * of open flats: 2, on a tray 1.
 *
 * @param outline outline of the prism
 * @param height H, m
 * @param openFlats n, 1 or 2
 */
record PrismErosion(Outline outline, double height, int openFlats) implements Erosion {
    /** What is left at each depth: exact up to the first break of the outline, beyond it to 1e-6 between the nodes. */
    static DepthProfile profile(Outline outline, double height, DepthProfile.Exposure exposure) {
        int open = exposure == DepthProfile.Exposure.TRAY ? 1 : 2;
        double[] breaks = outline.breaks();
        double deepest = height / open;
        // the breaks of the outline before the flats meet, then that depth
        int n = 0;
        while (n < breaks.length && breaks[n] < deepest) {
            n++;
        }
        // breaks beyond the depth at which the flats meet are dropped
        double[] all = Arrays.copyOf(breaks, Math.min(n + 1, breaks.length));
        if (n < breaks.length) {
            all[n] = deepest;
        }
        // up to the first break the outline is a square in d, so that the volume is a cubic
        return ProfileTable.cubicAtFirst(new PrismErosion(outline, height, open), all);
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
