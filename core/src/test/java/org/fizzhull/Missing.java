package org.fizzhull;

/** A null where the compiler's null checks expect a value: what a caller without such checks may pass. */
public final class Missing {
    private Missing() {}

    /** {@return null, as any type} */
    @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"})
    public static <T> T value() {
        return null;
    }
}
