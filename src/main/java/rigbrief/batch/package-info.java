/** Answering many briefs in one go: each by itself, each result whole, none answered twice. */
package rigbrief.batch;
