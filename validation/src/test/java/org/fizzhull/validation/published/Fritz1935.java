package org.fizzhull.validation.published;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Size at which a slowly growing bubble leaves a flat wall: Fritz (1935), {@code d = 0.0208 theta sqrt(sigma/(g drho))}
 * with the contact angle in degrees. The bubble size of a voyage is an uncertain input; this says where it belongs:
 * 0.6 to 1.1 mm on wet crystals (10 to 20 degrees), twice that on oily ones. Much gas and motion make bubbles smaller.
 *
 * <p>Source: Fritz (1935), size of departing bubbles [from memory].
 */
public final class Fritz1935 {
    private Fritz1935() {}

    /**
     * {@return the diameter of the bubble that leaves, m}
     *
     * @param contactAngle measured through the water, degrees
     * @param surfaceTension N/m
     * @param densityDifference of water and gas, kg/m3
     */
    public static double departureDiameter(double contactAngle, double surfaceTension, double densityDifference) {
        return 0.0208 * contactAngle * Math.sqrt(surfaceTension / (PhysicalConstants.GRAVITY * densityDifference));
    }
}
