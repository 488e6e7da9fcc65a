/** Judging any build by the rules and goals alone: findings, margins, the score recomputed. */
package rigbrief.audit;
