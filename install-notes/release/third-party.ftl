<#list dependencyMap as entry>
${entry.getKey().groupId}:${entry.getKey().artifactId} ${entry.getKey().version}
    ${entry.getValue()?join(", ")}<#if entry.getKey().url??>
    ${entry.getKey().url}</#if>
</#list>
