/** Handing rules and goals to the solver; the only package that knows Timefold. */
package rigbrief.search;
