/**
 * Published relations that no forecast calls: rows hold them against their own published values, and the library or its
 * assumptions against them.
 */
package org.fizzhull.validation.published;
