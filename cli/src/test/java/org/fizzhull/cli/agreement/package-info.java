/**
 * Holds the answers of one question against each other: sentence, rows, JSON, picture and sibling commands. Start with
 * {@link org.fizzhull.cli.agreement.Walk}; a contradiction found becomes one line in {@link
 * org.fizzhull.cli.agreement.Rules}.
 */
package org.fizzhull.cli.agreement;
