package org.fizzhull.mesh.uniting;

/** Says that what crosses what could not be told. */
final class UnclearException extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnclearException(String what) {
        super(what);
    }
}
