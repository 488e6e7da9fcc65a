/** Frame rates, task times, their statistics and how sure a prediction is. */
package rigbrief.model.speed;
