namespace LiveHeat.Engine.Judging;

/// <summary>
/// How many of a movement's no-reps one lane would have if all lanes were judged alike and all athletes moved alike. Each set goes on until its reps are done, so
/// with the same chance of a no-rep everywhere, and given how many the floor saw in all, the lane's number has the negative hypergeometric
/// distribution: it depends on no unknown rate. (Computed: a ratio of three numbers of combinations.)
/// </summary>
public static class NoRepLaw
{
    /// <summary>Chances of 0, 1, 2 ... <paramref name="noReps"/> no-reps on the lane.</summary>
    /// <param name="own">Reps that the lane did, from 1.</param>
    /// <param name="others">Reps that the others did, from 1.</param>
    /// <param name="noReps">No-reps on the whole floor, the lane's among them.</param>
    public static double[] Chances(int own, int others, int noReps)
    {
        // From each chance to the next by their ratio; the largest is kept in sight, so that nothing runs over or under.
        var logs = new double[noReps + 1];
        for (var k = 0; k < noReps; k++)
        {
            logs[k + 1] = logs[k] + Math.Log((double)(own + k) / (k + 1)) + Math.Log((double)(noReps - k) / (others + noReps - k - 1));
        }

        var most = logs.Max();
        var chances = logs.Select(log => Math.Exp(log - most)).ToArray();
        var sum = chances.Sum();
        return chances.Select(chance => chance / sum).ToArray();
    }

    /// <summary>The distribution of the sum of two that do not depend on each other.</summary>
    public static double[] Sum(double[] left, double[] right)
    {
        var sum = new double[left.Length + right.Length - 1];
        for (var i = 0; i < left.Length; i++)
        {
            for (var j = 0; j < right.Length; j++)
            {
                sum[i + j] += left[i] * right[j];
            }
        }

        return sum;
    }
}
