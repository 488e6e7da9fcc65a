/**
 * Explaining the figures that a search came to: proofs, budgets, replacements, what stock allows.
 */
package rigbrief.proposal.account;
