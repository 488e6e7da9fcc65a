/** Deciding what to offer: tiers, front, proof. */
package rigbrief.proposal;
